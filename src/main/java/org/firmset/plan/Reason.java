package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;

/** Why a stage could not start one site day sooner, everything else in the plan staying where it is. */
public sealed interface Reason {

    /** It has begun, or is finished, already. */
    record Begun(LocalDate on) implements Reason {}

    /** It starts on the first site day there is. */
    record FirstSiteDay(LocalDate date) implements Reason {}

    /** Another stage has to finish, and a wait to pass, until {@code ready}. */
    record Waiting(String waitId, String stageBefore, LocalDate ready) implements Reason {}

    /** It is pinned. */
    record Held(LocalDate sooner, String why) implements Reason {}

    /** It may not be done on that date. */
    record ShutThen(LocalDate sooner, String why) implements Reason {}

    /** Too few people come on that date. */
    record CrewShort(LocalDate sooner, int present, int needed) implements Reason {}

    /** The hours of that date are taken. */
    record HoursTaken(LocalDate sooner, int leftQuarters, List<String> byStages) implements Reason {
        public HoursTaken {
            byStages = List.copyOf(byStages);
        }
    }

    /** The battery would not last. */
    record PowerShort(LocalDate sooner, long neededWattHours) implements Reason {}

    /** Every piece of a tool is in use on that date. */
    record ToolTaken(LocalDate sooner, String tool, List<String> byStages) implements Reason {
        public ToolTaken {
            byStages = List.copyOf(byStages);
        }
    }

    /** It would spend more than the month allows. */
    record MoneyShort(LocalDate sooner) implements Reason {}

    /** A material cannot be on site by then. */
    record NotOnSite(LocalDate sooner, String material) implements Reason {}

    /** The trip of that date is not made: nothing would finish sooner by it. */
    record TripNotMade(LocalDate sooner) implements Reason {}

    /** It could start sooner, but nothing would finish sooner by it. */
    record NoGain(LocalDate sooner) implements Reason {}
}
