package org.firmset.spend.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.store.ReceiptBook;

/**
 * What the page of receipts needs to know of all of them. Each is read and taken apart once and let go of.
 *
 * @param listed those that were asked for, the latest first
 * @param written what stands on all of them
 */
record Listing(List<ListedReceipt> listed, Written written) {
    static Listing of(ReceiptBook book, UUID homestead, ReceiptFilter filter) {
        List<ListedReceipt> byDate = new ArrayList<>();
        Written written = new Written();
        book.each(homestead, kept -> {
            written.add(kept.receipt());
            listed(kept, filter, byDate);
        });
        return new Listing(byDate.reversed(), written);
    }

    private static void listed(KeptReceipt kept, ReceiptFilter filter, List<ListedReceipt> byDate) {
        Selected.of(kept.receipt(), filter)
                .ifPresent(part ->
                        byDate.add(new ListedReceipt(kept.id(), kept.receipt().date(), part)));
    }

    boolean isOfNothing() {
        return written.suppliers().isEmpty();
    }

    Selected sum(String currency) {
        return listed.stream().map(ListedReceipt::part).reduce(Selected.none(currency), Selected::plus);
    }
}
