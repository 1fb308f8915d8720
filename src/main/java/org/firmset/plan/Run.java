package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * One journey of one vehicle with materials.
 *
 * @param trip id of the trip it belongs to
 * @param date the site day on which there is something of it for the first time
 * @param offer id of the delivery offer; empty unless {@code kind} is {@link RunKind#DELIVERY}
 * @param broughtOn the date on which it comes to site: before {@code date} only for what a supplier drops while nobody is
 *     there
 */
public record Run(String trip, LocalDate date, RunKind kind, String offer, List<Load> loads, LocalDate broughtOn) {
    public Run {
        loads = List.copyOf(loads);
    }

    /** One that comes when somebody is there. */
    public Run(String trip, LocalDate date, RunKind kind, String offer, List<Load> loads) {
        this(trip, date, kind, offer, loads, date);
    }

    /** Whether it was dropped while nobody was there. */
    public boolean isDropped() {
        return broughtOn.isBefore(date);
    }
}
