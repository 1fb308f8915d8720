package org.firmset.plan;

import java.time.LocalDate;

/** A part of a critical path. */
public sealed interface PathLink {
    LocalDate from();

    LocalDate to();

    /** A stage at work; of one begun before the status date, the part that is still to do. */
    record Work(String stage, LocalDate from, LocalDate to) implements PathLink {}

    /** A wait that has to pass. */
    record Waiting(String waitId, LocalDate from, LocalDate to) implements PathLink {}

    /** Everything is ready but there is no trip, or none that can be used, until {@code to}. */
    record Gap(LocalDate from, LocalDate to, Reason why) implements PathLink {}
}
