package org.firmset.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/**
 * A supplier who brings materials to site, when somebody is there to take them.
 *
 * @param materials ids of what the supplier brings
 * @param grams the most one delivery may weigh
 * @param earliest the first date a delivery can come
 * @param weekdays on which weekdays it can come
 * @param cents the fee of one delivery
 */
public record DeliveryOffer(
        String id,
        String name,
        Set<String> materials,
        long grams,
        LocalDate earliest,
        Set<DayOfWeek> weekdays,
        long cents) {
    public DeliveryOffer {
        materials = Set.copyOf(materials);
        weekdays = Set.copyOf(weekdays);
        Require.notNegative(grams, "grams", "delivery offer", id);
        Require.notNegative(cents, "cents", "delivery offer", id);
    }

    public boolean comesOn(LocalDate date) {
        return !date.isBefore(earliest) && weekdays.contains(date.getDayOfWeek());
    }
}
