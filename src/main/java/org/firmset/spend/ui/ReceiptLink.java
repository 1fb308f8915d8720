package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Anchor;
import org.firmset.spend.Receipt;
import org.firmset.spend.store.KeptReceipt;

/** Names a receipt and leads to it, beside a form that must not be lost. */
final class ReceiptLink {
    private ReceiptLink() {}

    static Anchor to(KeptReceipt kept) {
        Receipt receipt = kept.receipt();
        Anchor link = new Anchor(
                SpendPages.receipt(kept.id()),
                "%s, %s, %s".formatted(receipt.supplier(), Months.date(receipt.date()), Figures.show(receipt.sum())));
        link.setTarget("_blank");
        return link;
    }
}
