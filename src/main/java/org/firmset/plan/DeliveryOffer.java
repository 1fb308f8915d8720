package org.firmset.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A supplier who brings materials to site.
 *
 * @param materials ids of what the supplier brings
 * @param grams the most one delivery may weigh, whatever the reason: the truck itself or the track it comes by
 * @param earliest the first date a delivery can come
 * @param weekdays on which weekdays it can come
 * @param cents the fee of one delivery
 * @param leastOrderCents goods of a delivery that are worth less take the fee for a small order as well; 0 for no such rule
 * @param smallOrderCents the fee for a small order
 * @param shutMonths months in which no truck gets to the site
 * @param attended false when goods may be dropped while nobody is there
 */
public record DeliveryOffer(
        String id,
        String name,
        Set<String> materials,
        long grams,
        LocalDate earliest,
        Set<DayOfWeek> weekdays,
        long cents,
        long leastOrderCents,
        long smallOrderCents,
        Set<Month> shutMonths,
        boolean attended) {

    /** After so many days every weekday of every month has been there once. */
    private static final int MOST_DAYS_BACK = 400;

    public DeliveryOffer {
        materials = Set.copyOf(materials);
        weekdays = Set.copyOf(weekdays);
        shutMonths = Set.copyOf(shutMonths);
        Require.notNegative(grams, "grams", "delivery offer", id);
        Require.notNegative(cents, "cents", "delivery offer", id);
        Require.notNegative(leastOrderCents, "leastOrderCents", "delivery offer", id);
        Require.notNegative(smallOrderCents, "smallOrderCents", "delivery offer", id);
    }

    /** One that takes any order, comes in any month and must be met. */
    public DeliveryOffer(
            String id,
            String name,
            Set<String> materials,
            long grams,
            LocalDate earliest,
            Set<DayOfWeek> weekdays,
            long cents) {
        this(id, name, materials, grams, earliest, weekdays, cents, 0, 0, Set.of(), true);
    }

    public DeliveryOffer withGrams(long changed) {
        return with(parts -> parts.grams = changed);
    }

    public DeliveryOffer withEarliest(LocalDate changed) {
        return with(parts -> parts.earliest = changed);
    }

    public DeliveryOffer withFee(long changedCents) {
        return with(parts -> parts.cents = changedCents);
    }

    public DeliveryOffer withSmallOrders(long leastCents, long feeCents) {
        return with(parts -> {
            parts.leastOrderCents = leastCents;
            parts.smallOrderCents = feeCents;
        });
    }

    public DeliveryOffer withShutMonths(Set<Month> changed) {
        return with(parts -> parts.shutMonths = changed);
    }

    public DeliveryOffer withAttended(boolean changed) {
        return with(parts -> parts.attended = changed);
    }

    private DeliveryOffer with(Consumer<Parts> change) {
        Parts parts = new Parts();
        change.accept(parts);
        return parts.offer();
    }

    /** What can be another in an offer that is otherwise the same. */
    private final class Parts {
        private long grams = DeliveryOffer.this.grams;
        private LocalDate earliest = DeliveryOffer.this.earliest;
        private long cents = DeliveryOffer.this.cents;
        private long leastOrderCents = DeliveryOffer.this.leastOrderCents;
        private long smallOrderCents = DeliveryOffer.this.smallOrderCents;
        private Set<Month> shutMonths = DeliveryOffer.this.shutMonths;
        private boolean attended = DeliveryOffer.this.attended;

        DeliveryOffer offer() {
            return new DeliveryOffer(
                    id,
                    name,
                    materials,
                    grams,
                    earliest,
                    weekdays,
                    cents,
                    leastOrderCents,
                    smallOrderCents,
                    shutMonths,
                    attended);
        }
    }

    public boolean comesOn(LocalDate date) {
        return !date.isBefore(earliest)
                && weekdays.contains(date.getDayOfWeek())
                && !shutMonths.contains(date.getMonth());
    }

    /** The last date on which it comes after a date and up to another, that included. */
    public Optional<LocalDate> lastBetween(LocalDate after, LocalDate upTo) {
        LocalDate date = upTo;
        for (int i = 0; i < MOST_DAYS_BACK && date.isAfter(after) && !date.isBefore(earliest); i++) {
            if (comesOn(date)) {
                return Optional.of(date);
            }
            date = date.minusDays(1);
        }
        return Optional.empty();
    }

    /** What a delivery takes beyond its fee when its goods are worth so much. */
    public long smallOrderCents(long goodsCents) {
        return goodsCents < leastOrderCents ? smallOrderCents : 0;
    }
}
