package org.firmset.spend.store;

import java.time.Clock;
import java.time.LocalDate;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.firmset.spend.table.SeedReceipts;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Puts the receipts of the demo beside its homestead. They lie in the autumn before its season; begun in a summer, that
 * autumn is still to come, and then they are of the one before, as nothing is bought after today.
 */
@Component
class DemoReceipts {
    private final ReceiptBook book;
    private final Homesteads homesteads;
    private final Clock clock;

    DemoReceipts(ReceiptBook book, Homesteads homesteads, Clock clock) {
        this.book = book;
        this.homesteads = homesteads;
        this.clock = clock;
    }

    @EventListener
    void added(Changes.DemoAdded demo) {
        homesteads.find(demo.homestead()).ifPresent(kept -> {
            ReceiptBook.Outcome outcome = book.takeAll(
                    kept.id(),
                    SeedReceipts.demo(kept.homestead(), demo.weeks(), LocalDate.now(clock)),
                    SeedReceipts.table().file());
            if (outcome instanceof ReceiptBook.Outcome.Refused refused) {
                throw new IllegalStateException("The receipts of the demo are not accepted: "
                        + refused.faults().getFirst().line());
            }
        });
    }
}
