package org.firmset.spend;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Worded;

/** What other receipts of a trip's days may hold already, so that it is not counted twice. People decide. */
public enum TripTwice implements Worded {
    /** A trip of these days was written down before. */
    TRIP("is a trip of these days that was written down before"),
    DRIVE("has fuel, which this drive counts too"),
    /** Food has no kind of its own. */
    FOOD("may be food, which is counted here too");

    private final String words;

    TripTwice(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }

    /** What another receipt may hold of this trip. The tank and the cooler are mostly filled the day before, so it counts. */
    public static Optional<TripTwice> of(TripReceipt trip, Receipt other) {
        List<ReceiptLine> lines = trip.receipt().lines();
        if (lines.isEmpty() || other.state() == ReceiptState.RETURNED || !isOnItsDays(trip, other)) {
            return Optional.empty();
        }
        if (TripReceipt.is(other)) {
            return Optional.of(TRIP);
        }
        if (has(lines, LineKind.FUEL) && has(other.lines(), LineKind.FUEL)) {
            return Optional.of(DRIVE);
        }
        boolean food = !trip.cost().food().isZero();
        return food && has(other.lines(), LineKind.OTHER) ? Optional.of(FOOD) : Optional.empty();
    }

    private static boolean isOnItsDays(TripReceipt trip, Receipt other) {
        LocalDate last = TripReceipt.is(other) ? TripReceipt.daysOf(other).last() : other.date();
        return !last.isBefore(trip.first().minusDays(1)) && !other.date().isAfter(trip.last());
    }

    private static boolean has(List<ReceiptLine> lines, LineKind kind) {
        return lines.stream().anyMatch(l -> l.kind() == kind);
    }
}
