package org.firmset.plan;

import java.time.LocalDate;

/** The part of a stage that is done on one site day. */
public record WorkBlock(String stage, LocalDate date, int quarters) {}
