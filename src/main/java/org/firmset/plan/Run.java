package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * One journey of one vehicle with materials.
 *
 * @param trip id of the trip it belongs to
 * @param offer id of the delivery offer; empty unless {@code kind} is {@link RunKind#DELIVERY}
 */
public record Run(String trip, LocalDate date, RunKind kind, String offer, List<Load> loads) {
    public Run {
        loads = List.copyOf(loads);
    }
}
