package org.firmset.spend.store;

import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.spend.table.SeedReceipts;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Puts the receipts of the demo beside its homestead. */
@Component
class DemoReceipts {
    private final ReceiptBook book;
    private final Homesteads homesteads;

    DemoReceipts(ReceiptBook book, Homesteads homesteads) {
        this.book = book;
        this.homesteads = homesteads;
    }

    @EventListener
    void added(Changes.DemoAdded demo) {
        homesteads.find(demo.homestead()).ifPresent(kept -> {
            ReceiptBook.Outcome outcome = book.takeAll(
                    kept.id(),
                    SeedReceipts.demo(kept.homestead(), demo.weeks()),
                    SeedReceipts.table().file());
            if (outcome instanceof ReceiptBook.Outcome.Refused refused) {
                throw new IllegalStateException("The receipts of the demo are not accepted: "
                        + refused.faults().getFirst().line());
            }
        });
    }
}
