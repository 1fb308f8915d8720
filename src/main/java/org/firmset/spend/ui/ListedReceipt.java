package org.firmset.spend.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.firmset.spend.store.KeptReceipt;

/** A receipt and the part of it that was asked for. */
record ListedReceipt(KeptReceipt kept, Selected part) {
    /** The latest first. */
    static List<ListedReceipt> of(List<KeptReceipt> all, ReceiptFilter filter) {
        return all.reversed().stream().flatMap(k -> of(k, filter)).toList();
    }

    private static Stream<ListedReceipt> of(KeptReceipt kept, ReceiptFilter filter) {
        Optional<Selected> part = Selected.of(kept.receipt(), filter);
        return part.map(p -> new ListedReceipt(kept, p)).stream();
    }

    static Selected sum(List<ListedReceipt> listed, String currency) {
        return listed.stream().map(ListedReceipt::part).reduce(Selected.none(currency), Selected::plus);
    }
}
