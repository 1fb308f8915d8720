package org.firmset.plan.check;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The charge of the battery through the hours of a trip; {@link Charging} reckons it.
 *
 * @param hours from the hour at which work may begin on the first day to the midnight after the last
 * @param judged how many of them the rule is about: those to the midnight after the last work that draws
 */
public record TripCharge(List<Hour> hours, int judged) {
    private static final BigInteger FOUR = BigInteger.valueOf(4);

    public TripCharge {
        hours = List.copyOf(hours);
    }

    /**
     * One hour; energy in quarters of a watt-hour, below zero where an empty battery was asked for more.
     *
     * @param hour 0 to 23
     * @param before charge when it begins
     * @param after charge when it ends
     * @param floor what must be left
     * @param sun what the panels bring
     * @param generator what the generator gives
     * @param base drawn besides work
     * @param work drawn by work
     */
    public record Hour(
            LocalDate date,
            int hour,
            BigInteger before,
            BigInteger after,
            BigInteger floor,
            BigInteger sun,
            BigInteger generator,
            BigInteger base,
            BigInteger work) {

        /** How far the charge is over its floor at the lower of both ends; below zero where it is under. */
        public BigInteger left() {
            return before.min(after).subtract(floor);
        }

        /** Quarters of a watt-hour in whole Wh, rounded down; the greatest number there is when it is more. */
        public static long wattHours(BigInteger quarters) {
            BigInteger most = BigInteger.valueOf(Long.MAX_VALUE);
            BigInteger[] whole = quarters.divideAndRemainder(FOUR);
            BigInteger down = whole[1].signum() < 0 ? whole[0].subtract(BigInteger.ONE) : whole[0];
            return down.min(most).max(most.negate()).longValueExact();
        }
    }

    /** The first hour in which the floor is gone under, where the rule is about it. */
    public Optional<Hour> broken() {
        return hours.stream().limit(judged).filter(h -> h.left().signum() < 0).findFirst();
    }

    /** The hour in which least is left over the floor; empty for a trip without an hour. */
    public Optional<Hour> lowest() {
        return hours.stream().min(Comparator.comparing(Hour::left));
    }
}
