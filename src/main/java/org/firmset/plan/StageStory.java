package org.firmset.plan;

import java.time.LocalDate;

/**
 * What a plan says of one stage.
 *
 * @param start its first work, done or planned
 * @param finish its last work, done or planned
 * @param whyNotSooner why it does not start one site day sooner
 * @param slackDays calendar days its finish can slip while its subproject's finish, and every other's, stays
 * @param slackTrips the same in trips
 */
public record StageStory(
        String stage, LocalDate start, LocalDate finish, Reason whyNotSooner, int slackDays, int slackTrips) {}
