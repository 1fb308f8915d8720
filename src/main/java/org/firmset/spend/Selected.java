package org.firmset.spend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * What of some receipts a filter lets through, by the same sharing as the {@link Forecast}, so that each of its figures
 * is the sum of its receipts. Whole cents: one is kept for each of thousands of receipts, and they are added up while
 * somebody waits for the page.
 */
public record Selected(String currency, long spentCents, long committedCents, long heldBackCents) {
    public static Selected none(String currency) {
        return new Selected(currency, 0, 0, 0);
    }

    /** What of a receipt counts on one day. */
    public record OnDay(LocalDate on, Selected part) {}

    /** The part of a receipt the filter lets through; empty when it is none of it. */
    public static Optional<Selected> of(Receipt receipt, ReceiptFilter filter) {
        return byDay(receipt, filter).stream().map(OnDay::part).reduce(Selected::plus);
    }

    /**
     * The same day by day, the earlier first: what was paid at once and is committed on the day of the receipt, a rest that
     * was paid later on the day it was.
     */
    public static List<OnDay> byDay(Receipt receipt, ReceiptFilter filter) {
        boolean first = filter.takes(receipt.date());
        Optional<LocalDate> rest = receipt.restPaidOn().filter(filter::takes);
        if (!filter.takes(receipt) || (!first && rest.isEmpty())) {
            return List.of();
        }
        ReceiptCosts.Apart apart = ReceiptCosts.apart(receipt);
        if (apart.costs().stream().noneMatch(filter::takes)) {
            return List.of();
        }
        List<OnDay> days = new ArrayList<>();
        if (first) {
            days.add(new OnDay(receipt.date(), sum(apart, filter, Selected::atOnce)));
        }
        rest.ifPresent(day -> days.add(new OnDay(day, sum(apart, filter, Selected::later))));
        return days;
    }

    /** What of the cost with this number counts. */
    private interface Counting {
        Selected of(ReceiptCosts.Apart apart, int cost);
    }

    private static Selected sum(ReceiptCosts.Apart apart, ReceiptFilter filter, Counting counting) {
        Selected sum = none(apart.receipt().currency());
        for (int i = 0; i < apart.costs().size(); i++) {
            if (filter.takes(apart.costs().get(i))) {
                sum = sum.plus(counting.of(apart, i));
            }
        }
        return sum;
    }

    private static Selected atOnce(ReceiptCosts.Apart apart, int cost) {
        long all = Cash.cents(apart.costs().get(cost).amount());
        long paid = Cash.cents(apart.paid().get(cost));
        return part(apart, cost, Cash.cents(apart.atOnce().get(cost)), all - paid);
    }

    private static Selected later(ReceiptCosts.Apart apart, int cost) {
        long paid = Cash.cents(apart.paid().get(cost));
        return part(apart, cost, paid - Cash.cents(apart.atOnce().get(cost)), 0);
    }

    private static Selected part(ReceiptCosts.Apart apart, int cost, long paid, long committed) {
        String currency = apart.receipt().currency();
        return apart.costs().get(cost).kind() == LineKind.DEPOSIT
                ? new Selected(currency, 0, 0, paid)
                : new Selected(currency, paid, committed, 0);
    }

    public Selected plus(Selected other) {
        return new Selected(
                currency,
                spentCents + other.spentCents,
                committedCents + other.committedCents,
                heldBackCents + other.heldBackCents);
    }

    public Money spent() {
        return Cash.ofCents(spentCents, currency);
    }

    public Money committed() {
        return Cash.ofCents(committedCents, currency);
    }

    /** Refundable deposits, which are in no other sum. */
    public Money heldBack() {
        return Cash.ofCents(heldBackCents, currency);
    }
}
