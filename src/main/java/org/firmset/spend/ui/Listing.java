package org.firmset.spend.ui;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.store.ReceiptBook;

/**
 * What the page of receipts needs to know of all of them. Each is read and taken apart once and let go of.
 *
 * @param listed those that were asked for, the latest first; one whose rest was paid later has a row for each of its days
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
        // receipts come by their dates, rests of orders with them
        byDate.sort(Comparator.comparing(ListedReceipt::date));
        return new Listing(byDate.reversed(), written);
    }

    private static void listed(KeptReceipt kept, ReceiptFilter filter, List<ListedReceipt> byDate) {
        Selected.byDay(kept.receipt(), filter)
                .forEach(day -> byDate.add(new ListedReceipt(kept.id(), day.on(), day.part())));
    }

    /** How many receipts are listed, those with a rest that was paid later once. */
    long receipts() {
        return listed.stream().map(ListedReceipt::id).distinct().count();
    }

    boolean isOfNothing() {
        return written.suppliers().isEmpty();
    }

    Selected sum(String currency) {
        return listed.stream().map(ListedReceipt::part).reduce(Selected.none(currency), Selected::plus);
    }
}
