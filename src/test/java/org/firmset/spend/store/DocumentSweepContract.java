package org.firmset.spend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Store;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.store.ReceiptBook.Outcome;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Which photos are removed and which are never lost, on every database; a subclass says only which one. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class DocumentSweepContract {
    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration HELD = Duration.ofMillis(400);

    private Store store;
    private Documents documents;
    private ReceiptBook book;
    private UUID place;
    private int photos;

    abstract Map<String, Object> environment() throws Exception;

    @BeforeAll
    void open() throws Exception {
        store = Store.open(environment(), ReceiptParts.class);
        documents = store.bean(Documents.class);
        book = store.bean(ReceiptBook.class);
    }

    @AfterAll
    void close() {
        store.close();
    }

    @BeforeEach
    void begin() throws IOException {
        place = store.bean(Homesteads.class)
                .add(SeedHomesteads.demo(LocalDate.of(2026, 12, 1)))
                .id();
        documents.removeUnused(Duration.ofDays(-1));
    }

    private byte[] photo() {
        photos++;
        return new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) photos, (byte) (photos >> 8)};
    }

    private KeptDocument taken(byte[] photo) throws IOException {
        Documents.Taken taken = documents.take("photo.jpg", new ByteArrayInputStream(photo));
        return ((Documents.Taken.Stored) taken).document();
    }

    /** Handed in 25 hours ago. */
    private KeptDocument old(byte[] photo) throws IOException {
        KeptDocument document = taken(photo);
        Files.setLastModifiedTime(file(document), FileTime.from(Store.NOW.minus(Duration.ofHours(25))));
        return document;
    }

    private Path file(KeptDocument document) {
        return documents.file(document).orElseThrow();
    }

    private boolean isThere(KeptDocument document) {
        boolean noted = documents.find(document.hash()).isPresent();
        assertThat(documents.file(document).isPresent()).isEqualTo(noted);
        return noted;
    }

    private static Receipt receipt(@Nullable ContentHash named) {
        ReceiptLine line = new ReceiptLine(
                LineKind.TOOL, "Spade", null, BigDecimal.ONE, null, Cash.ofCents(100, "USD"), List.of());
        return new Receipt(
                "one",
                LocalDate.of(2027, 4, 3),
                "Yard",
                ReceiptState.PAID,
                List.of(line),
                Cash.ofCents(0, "USD"),
                Cash.ofCents(0, "USD"),
                Cash.ofCents(0, "USD"),
                null,
                named);
    }

    private Outcome attach(KeptDocument document) {
        return book.add(place, receipt(document.hash()), List.of(document));
    }

    @Test
    void what_nobody_kept_for_a_day_is_gone_and_what_is_younger_stays() throws IOException {
        KeptDocument old = old(photo());
        KeptDocument young = taken(photo());
        assertThat(documents.removeUnused(DAY)).isEqualTo(1);
        assertThat(isThere(old)).isFalse();
        assertThat(isThere(young)).isTrue();
    }

    @Test
    void what_a_receipt_has_attached_or_names_stays_until_the_receipt_goes() throws IOException {
        KeptDocument attached = old(photo());
        KeptDocument named = old(photo());
        KeptReceipt kept = ((Outcome.Stored) book.add(place, receipt(null), List.of(attached))).receipt();
        book.add(place, receipt(named.hash()), List.of());
        assertThat(documents.removeUnused(DAY)).isZero();
        assertThat(isThere(attached) && isThere(named)).isTrue();
        book.remove(place, kept.id(), kept.version());
        assertThat(documents.removeUnused(DAY)).isEqualTo(1);
        assertThat(isThere(attached)).isFalse();
    }

    @Test
    void the_same_photo_handed_in_again_has_a_day_again() throws IOException {
        byte[] photo = photo();
        KeptDocument document = old(photo);
        taken(photo);
        assertThat(documents.removeUnused(DAY)).isZero();
        assertThat(isThere(document)).isTrue();
    }

    @Test
    void a_file_that_is_missing_leaves_no_row_behind_and_one_that_cannot_be_removed_keeps_its_row() throws IOException {
        KeptDocument missing = taken(photo());
        Files.delete(file(missing));
        assertThat(documents.removeUnused(DAY)).isEqualTo(1);
        assertThat(documents.find(missing.hash())).isEmpty();
        KeptDocument stuck = old(photo());
        assertThatThrownBy(() -> store.bean(DocumentRows.class).forgetUnused(stuck.hash(), () -> {
                    throw new UncheckedIOException(new IOException("the disk is gone"));
                }))
                .hasRootCauseMessage("the disk is gone");
        assertThat(isThere(stuck)).isTrue();
    }

    @Test
    void an_upload_that_is_running_is_waited_for() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        InputStream slow = new ByteArrayInputStream(photo()) {
            @Override
            public int readNBytes(byte[] bytes, int offset, int length) {
                begun.countDown();
                await(go);
                return super.readNBytes(bytes, offset, length);
            }
        };
        try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
            Future<Documents.Taken> upload = threads.submit(() -> documents.take("slow.jpg", slow));
            await(begun);
            Future<Integer> sweep = threads.submit(() -> documents.removeUnused(DAY));
            assertThat(isStillRunning(sweep)).isTrue();
            go.countDown();
            assertThat(sweep.get()).isZero();
            assertThat(isThere(((Documents.Taken.Stored) upload.get()).document()))
                    .isTrue();
        }
    }

    @Test
    void what_is_being_attached_is_waited_for_and_stays() throws Exception {
        KeptDocument document = old(photo());
        TransactionTemplate transaction = new TransactionTemplate(store.bean(PlatformTransactionManager.class));
        try (ExecutorService threads = Executors.newSingleThreadExecutor()) {
            Future<Integer> sweep = transaction.execute(status -> {
                assertThat(attach(document)).isInstanceOf(Outcome.Stored.class);
                Future<Integer> begun = threads.submit(() -> documents.removeUnused(DAY));
                assertThat(isStillRunning(begun)).isTrue();
                return begun;
            });
            assertThat(sweep.get()).isZero();
        }
        assertThat(isThere(document)).isTrue();
    }

    @Test
    void what_is_just_being_removed_is_not_attached_and_the_receipt_says_what_to_do() throws Exception {
        KeptDocument document = old(photo());
        AtomicReference<Future<Outcome>> attaching = new AtomicReference<>();
        try (ExecutorService threads = Executors.newSingleThreadExecutor()) {
            store.bean(DocumentRows.class).forgetUnused(document.hash(), () -> {
                attaching.set(threads.submit(() -> attach(document)));
                assertThat(isStillRunning(attaching.get())).isTrue();
            });
            Outcome outcome = attaching.get().get();
            assertThat(((Outcome.Refused) outcome).faults())
                    .extracting(Fault::pointer, Fault::value)
                    .containsExactly(tuple("/documents", "photo.jpg"));
        }
        assertThat(book.all(place)).isEmpty();
    }

    @Test
    void whichever_comes_first_a_stored_receipt_has_its_photo() throws Exception {
        int stored = 0;
        try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
            for (int i = 0; i < 40; i++) {
                KeptDocument document = old(photo());
                CyclicBarrier start = new CyclicBarrier(2);
                Future<Outcome> attaching = threads.submit(() -> {
                    start.await();
                    return attach(document);
                });
                Future<Integer> sweep = threads.submit(() -> {
                    start.await();
                    return documents.removeUnused(DAY);
                });
                boolean kept = attaching.get() instanceof Outcome.Stored;
                assertThat(isThere(document)).as("round %s", i).isEqualTo(kept);
                assertThat(sweep.get()).as("round %s", i).isEqualTo(kept ? 0 : 1);
                stored += kept ? 1 : 0;
            }
        }
        assertThat(book.all(place)).hasSize(stored);
    }

    /** The power went while a photo was coming in: nobody knows of its first half any more. */
    @Test
    void what_a_power_cut_left_half_written_is_gone_after_a_day_and_nothing_else() throws IOException {
        KeptDocument attached = old(photo());
        book.add(place, receipt(null), List.of(attached));
        // documents/ab/abcdef
        Path folder = file(attached).resolve("../..").normalize();
        Path old = lying(folder.resolve("new-4711.part"), 25);
        Path young = lying(folder.resolve("new-4712.part"), 23);
        Path foreign = lying(folder.resolve("notes.txt"), 25);
        Path full = Files.createDirectories(folder.resolve("new-4713.part"));
        lying(full.resolve("more.part"), 25);
        Files.setLastModifiedTime(full, FileTime.from(Store.NOW.minus(Duration.ofHours(25))));
        new DocumentSweep(documents).sweep();
        assertThat(old).doesNotExist();
        assertThat(young).exists();
        assertThat(foreign).exists();
        assertThat(full.resolve("more.part")).exists();
        assertThat(isThere(attached)).isTrue();
    }

    private static Path lying(Path file, int hours) throws IOException {
        Files.write(file, new byte[] {1, 2, 3});
        return Files.setLastModifiedTime(file, FileTime.from(Store.NOW.minus(Duration.ofHours(hours))));
    }

    private static boolean isStillRunning(Future<?> work) {
        try {
            work.get(HELD.toMillis(), TimeUnit.MILLISECONDS);
            return false;
        } catch (TimeoutException e) {
            return true;
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
