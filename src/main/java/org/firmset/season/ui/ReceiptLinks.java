package org.firmset.season.ui;

import org.firmset.spend.Forecast;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.ui.SpendPages;
import org.jspecify.annotations.Nullable;

/** Where the receipts of a figure are listed. */
final class ReceiptLinks {
    private ReceiptLinks() {}

    static String to(ReceiptFilter receipts) {
        return SpendPages.receipts(receipts);
    }

    /** What of them is committed: the orders among them. */
    static String toOrders(ReceiptFilter receipts) {
        return to(receipts.withState(ReceiptState.ORDERED));
    }

    static ReceiptFilter of(@Nullable String subproject) {
        return ReceiptFilter.ofSubproject(ReceiptFilter.orNobody(subproject));
    }

    static ReceiptFilter of(Forecast.Of of) {
        return of(of.subproject()).withStage(ReceiptFilter.orNobody(of.stage())).withKind(of.kind());
    }
}
