package org.firmset.spend.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Store;
import org.firmset.spend.ContentHash;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.firmset.spend.store.ReceiptBook.Outcome;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What {@link ReceiptBook} promises on every database; a subclass says only which one. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ReceiptBookContract {
    private static final Homestead DEMO = SeedHomesteads.demo(LocalDate.of(2026, 12, 1));
    private static final ContentHash FILE = ContentHash.of(new byte[] {1});

    private Store store;
    private ReceiptBook book;
    private UUID place;
    private final RandomReceipts random = new RandomReceipts(RandomReceipts.SEED);

    /** What to set in the environment so that the program uses this database. */
    abstract Map<String, Object> environment() throws Exception;

    @BeforeAll
    void open() throws Exception {
        store = Store.open(environment(), ReceiptParts.class);
        book = store.bean(ReceiptBook.class);
    }

    @AfterAll
    void close() {
        store.close();
    }

    @BeforeEach
    void addHomestead() {
        place = store.bean(Homesteads.class).add(DEMO).id();
    }

    private KeptReceipt added(Receipt receipt) {
        return ((Outcome.Stored) book.add(place, receipt, List.of())).receipt();
    }

    private List<Receipt> all() {
        return book.all(place).stream().map(KeptReceipt::receipt).toList();
    }

    private static List<Receipt> byDate(List<Receipt> receipts) {
        return receipts.stream()
                .sorted(Comparator.comparing(Receipt::date).thenComparing(Receipt::key))
                .toList();
    }

    @Test
    void receipts_of_all_kinds_are_found_as_they_were_kept_by_date() {
        List<Receipt> receipts = random.many(120);
        assertThat(book.takeAll(place, receipts, FILE)).isInstanceOf(Outcome.Stored.class);
        assertThat(all()).isEqualTo(byDate(receipts));
        KeptReceipt one = book.all(place).getFirst();
        assertThat(book.find(place, one.id())).contains(one);
    }
}
