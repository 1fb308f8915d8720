package org.firmset.spend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Where the money went and where it will end: spent + committed + still to buy = expected at finish.
 *
 * <p>Refundable deposits stand apart and are in no sum; they cost nothing unless they are lost. A line that nobody bears
 * yet stands under no subproject and is in the whole. Low and high differ only where prices of what is still to buy lay
 * apart; they are no odds.
 *
 * @param rows for each subproject, stage and kind that costs anything, in the order in which they first come up
 * @param heldBack refundable deposits that are out
 * @param unpriced materials that are needed and that nobody has a price for: the sums are too low by them
 */
public record Forecast(String currency, List<Row> rows, Money heldBack, List<String> unpriced) {
    public Forecast {
        rows = List.copyOf(rows);
        unpriced = List.copyOf(unpriced);
    }

    /**
     * Whose money it is.
     *
     * @param subproject null for what nobody bears yet
     * @param stage null for what belongs to the subproject as a whole
     * @param kind null in a sum over all kinds
     */
    public record Of(
            @Nullable String subproject,
            @Nullable String stage,
            @Nullable LineKind kind) {}

    /** Parts of one sum, none counted twice; toBuy, low and high are three prices of the same things. */
    public record Row(Of of, Money spent, Money committed, Money toBuy, Money low, Money high) {
        public Money expected() {
            return spent.add(committed).add(toBuy);
        }

        /** What it comes to when all that is still to buy costs the least that was asked lately. */
        public Money lowest() {
            return spent.add(committed).add(low);
        }

        public Money highest() {
            return spent.add(committed).add(high);
        }

        private Row plus(Row other, Of whose) {
            return new Row(
                    whose,
                    spent.add(other.spent),
                    committed.add(other.committed),
                    toBuy.add(other.toBuy),
                    low.add(other.low),
                    high.add(other.high));
        }
    }

    /**
     * @param receipts without faults
     * @param unpriced materials among the needs that have no price
     */
    public static Forecast of(
            String currency, List<Receipt> receipts, List<? extends Ahead> toBuy, List<String> unpriced) {
        SpentSums spent = new SpentSums(currency);
        receipts.forEach(r -> spent.add(ReceiptCosts.apart(r)));
        return spent.forecast().with(toBuy, unpriced);
    }

    /** The same with what is still to buy on top of it. */
    public Forecast with(List<? extends Ahead> toBuy, List<String> unpricedToo) {
        Map<Of, Row> sums = new LinkedHashMap<>();
        rows.forEach(row -> sums.put(row.of(), row));
        Money none = Cash.ofCents(0, currency);
        for (Ahead buy : toBuy) {
            Of of = new Of(buy.subproject(), buy.stage(), buy.kind());
            Row row = new Row(of, none, none, buy.expected(), buy.low(), buy.high());
            sums.merge(of, row, (one, other) -> one.plus(other, of));
        }
        return new Forecast(currency, new ArrayList<>(sums.values()), heldBack, unpricedToo);
    }

    /** One row for each subproject, by key; what nobody bears yet is not among them. */
    public Map<String, Row> bySubproject() {
        Map<String, Row> sums = new TreeMap<>();
        for (Row row : rows) {
            String subproject = row.of().subproject();
            if (subproject != null) {
                sums.merge(subproject, row.plus(none(), new Of(subproject, null, null)), (a, b) -> a.plus(b, a.of()));
            }
        }
        return sums;
    }

    /** Everything, what nobody bears yet included. */
    public Row whole() {
        return sumOf(of -> true);
    }

    /** A stage over all kinds; all zero when it costs nothing. */
    public Row ofStage(@Nullable String subproject, @Nullable String stage) {
        Row sum = sumOf(of -> Objects.equals(of.subproject(), subproject) && Objects.equals(of.stage(), stage));
        return sum.plus(none(), new Of(subproject, stage, null));
    }

    /** The sum of some rows; all zero when there is none. */
    public Row sumOf(Predicate<Of> wanted) {
        return rows.stream().filter(r -> wanted.test(r.of())).reduce(none(), (a, b) -> a.plus(b, a.of()));
    }

    private Row none() {
        Money zero = Cash.ofCents(0, currency);
        return new Row(new Of(null, null, null), zero, zero, zero, zero, zero);
    }

    /** By how much a rise of prices, in percent of each thing that rises, moves the sum at the finish. */
    public static Money riseOf(String currency, List<? extends Ahead> toBuy, Map<String, BigDecimal> percent) {
        return toBuy.stream()
                .map(b -> b.rise(percent.getOrDefault(b.what(), BigDecimal.ZERO)))
                .reduce(Cash.ofCents(0, currency), Money::add);
    }
}
