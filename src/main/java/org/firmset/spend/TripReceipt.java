package org.firmset.spend;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firmset.homestead.OpenTrip;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * A trip that was made, to be written down as one ordinary receipt, so that it counts in every sum as all others do.
 *
 * @param last not before the first day
 * @param rule by which the homestead shares trips; equal parts when it says nothing of these parts
 * @param parts stages and subprojects the trip served; empty while that has not been said. One that is named twice counts
 *     once, with all its hours and mass
 */
public record TripReceipt(
        LocalDate first,
        LocalDate last,
        TripCost cost,
        TripCost.Rule rule,
        List<TripCost.Part> parts,
        DriveWords words) {
    /** Stands in the place of who sold it, alike for all trips, so that they can be listed together. */
    public static final String SUPPLIER = "Own trip";

    private static final String DRIVE = "Drive";
    private static final String BETWEEN = ", ";
    private static final String TO = " to ";
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    public TripReceipt {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException(
                    "trip must not end on [" + last + "], before it begins on [" + first + "]");
        }
        parts = together(parts);
    }

    private static List<TripCost.Part> together(List<TripCost.Part> parts) {
        Map<Share, TripCost.Part> all = new LinkedHashMap<>();
        parts.forEach(p -> all.merge(
                bearer(p),
                p,
                (a, b) -> new TripCost.Part(
                        a.subproject(), a.stage(), a.quarters() + b.quarters(), a.grams() + b.grams())));
        return List.copyOf(all.values());
    }

    /** Whether a receipt is a trip that was written down so. */
    public static boolean is(Receipt receipt) {
        return receipt.supplier().equals(SUPPLIER);
    }

    /**
     * What was typed of the drive of such a receipt, in the units it was typed in; when its texts were changed since, one
     * sum.
     */
    public static DriveWords.Typed typed(Receipt trip, DriveWords words) {
        return trip.lines().stream()
                .map(ReceiptLine::text)
                .filter(t -> t.startsWith(DRIVE))
                .findFirst()
                .map(words::read)
                .orElseGet(() -> DriveWords.Typed.of(DriveWay.ON_RECEIPTS));
    }

    /** The days of such a receipt as its texts tell them; its date alone when these were changed since. */
    public static OpenTrip daysOf(Receipt trip) {
        return trip.lines().stream()
                .map(line -> line.text().split(BETWEEN))
                .filter(words -> words.length > 1)
                .flatMap(words -> lastDay(words[1])
                        .filter(last -> !last.isBefore(trip.date()))
                        .map(last -> new OpenTrip(trip.date(), last))
                        .filter(days -> words(days.first(), days.last()).equals(words[1]))
                        .stream())
                .findFirst()
                .orElseGet(() -> new OpenTrip(trip.date(), trip.date()));
    }

    private static Optional<LocalDate> lastDay(String days) {
        try {
            int to = days.lastIndexOf(TO);
            return Optional.of(LocalDate.parse(to < 0 ? days : days.substring(to + TO.length()), DATE));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** The rule its shares follow. */
    public TripCost.Rule ruleUsed() {
        return rule.saying(parts);
    }

    /**
     * Dated on the first day, on which plans count their trips. What costs nothing has no line; without any line {@link
     * ReceiptRules} refuses it. Tolls stand with the drive, as plans have them in what a trip costs: as a fee they would
     * be taken for a part of a permit that is still to be paid. Beside fuel that has receipts of its own they are of no
     * kind, or they would count as one drive more.
     */
    public Receipt receipt() {
        Money none = Cash.ofCents(0, cost.food().getCurrency().getCurrencyCode());
        boolean counted = !(cost.drive() instanceof TripCost.OnReceipts);
        List<ReceiptLine> lines = new ArrayList<>();
        String drive = words.of(cost.drive());
        line(LineKind.FUEL, DRIVE, drive, cost.drive().cost()).ifPresent(lines::add);
        line(counted ? LineKind.FUEL : LineKind.OTHER, "Tolls", "", cost.tolls())
                .ifPresent(lines::add);
        line(LineKind.OTHER, "Food", "", cost.food()).ifPresent(lines::add);
        return new Receipt("trip-" + first, first, SUPPLIER, ReceiptState.PAID, lines, none, none, none, null, null);
    }

    private Optional<ReceiptLine> line(LineKind kind, String what, String more, Money amount) {
        String text = what + BETWEEN + days() + (more.isEmpty() ? "" : BETWEEN + more);
        return amount.isZero()
                ? Optional.empty()
                : Optional.of(new ReceiptLine(kind, text, null, BigDecimal.ONE, null, amount, shares()));
    }

    /** Hours, kilograms or equal parts; who has none of what the rule counts bears nothing. */
    private List<Share> shares() {
        TripCost.Rule used = ruleUsed();
        return parts.stream()
                .filter(p -> used.weight(p).signum() > 0)
                .map(p -> new Share(p.subproject(), p.stage(), used.weight(p)))
                .toList();
    }

    /** What each part bears by the receipt, in the order of the parts; nothing where it costs nothing. */
    public List<TripCost.Borne> borne() {
        Receipt receipt = receipt();
        Money none = Cash.ofCents(0, receipt.currency());
        Map<Share, Money> sums = new LinkedHashMap<>();
        parts.forEach(p -> sums.put(bearer(p), none));
        // without lines nothing can be taken apart
        List<ReceiptCosts.Cost> costs = receipt.lines().isEmpty() ? List.of() : ReceiptCosts.of(receipt);
        for (ReceiptCosts.Cost cost : costs) {
            if (cost.subproject() != null) {
                sums.merge(Share.all(cost.subproject(), cost.stage()), cost.amount(), Money::add);
            }
        }
        return parts.stream()
                .map(p -> new TripCost.Borne(p, sums.getOrDefault(bearer(p), none), ruleUsed()))
                .toList();
    }

    private static Share bearer(TripCost.Part part) {
        return Share.all(part.subproject(), part.stage());
    }

    /** "12 to 13 Sep 2026", "31 Jul to 1 Aug 2027", "31 Dec 2026 to 1 Jan 2027", "12 Sep 2026". */
    public String days() {
        return words(first, last);
    }

    private static String words(LocalDate first, LocalDate last) {
        if (first.equals(last)) {
            return DATE.format(first);
        }
        boolean sameYear = first.getYear() == last.getYear();
        boolean sameMonth = sameYear && first.getMonth() == last.getMonth();
        String from = sameMonth ? Integer.toString(first.getDayOfMonth()) : (sameYear ? MONTH_DAY : DATE).format(first);
        return from + TO + DATE.format(last);
    }
}
