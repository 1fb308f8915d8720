package org.firmset.season.ui;

import java.time.YearMonth;
import java.util.Collection;
import java.util.Set;
import org.firmset.season.money.Thing;
import org.firmset.spend.Forecast;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.ui.SpendPages;
import org.jspecify.annotations.Nullable;

/** Where the receipts of a figure are listed; of what is committed, only the orders. */
final class ReceiptLinks {
    private ReceiptLinks() {}

    static String all() {
        return SpendPages.receipts(ReceiptFilter.ALL);
    }

    static String allOrders() {
        return orders(ReceiptFilter.ALL);
    }

    static String ofSubproject(@Nullable String key) {
        return SpendPages.receipts(of(key));
    }

    static String ordersOfSubproject(@Nullable String key) {
        return orders(of(key));
    }

    static String ofMonth(YearMonth month) {
        return SpendPages.receipts(ReceiptFilter.ALL.withMonth(month));
    }

    static String of(Forecast.Of of) {
        return SpendPages.receipts(filter(of));
    }

    static String ordersOf(Forecast.Of of) {
        return orders(filter(of));
    }

    /** Just the receipts of what differs from a budget. */
    static String of(Thing thing) {
        return SpendPages.receipts(thing.receipts());
    }

    static String ordersOf(Thing thing) {
        return orders(thing.receipts());
    }

    /** What a stage cost, whoever bears it. */
    static String ofStage(String key) {
        return SpendPages.receipts(ReceiptFilter.ALL.withStage(key));
    }

    static String ordersOfStage(String key) {
        return orders(ReceiptFilter.ALL.withStage(key));
    }

    /** What all finished stages cost. */
    static String ofFinished(Collection<String> stages) {
        return SpendPages.receipts(ReceiptFilter.ofFinished(Set.copyOf(stages)));
    }

    static String ordersOfFinished(Collection<String> stages) {
        return orders(ReceiptFilter.ofFinished(Set.copyOf(stages)));
    }

    private static String orders(ReceiptFilter filter) {
        return SpendPages.receipts(filter.withState(ReceiptState.ORDERED));
    }

    private static ReceiptFilter of(@Nullable String subproject) {
        return ReceiptFilter.ofSubproject(ReceiptFilter.orNobody(subproject));
    }

    private static ReceiptFilter filter(Forecast.Of of) {
        return of(of.subproject()).withStage(ReceiptFilter.orNobody(of.stage())).withKind(of.kind());
    }
}
