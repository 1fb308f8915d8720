package org.firmset.spend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import com.zaxxer.hikari.HikariDataSource;
import jakarta.persistence.PersistenceException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import javax.sql.DataSource;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Store;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Forecast;
import org.firmset.spend.LineKind;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptCosts;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Selected;
import org.firmset.spend.Share;
import org.firmset.spend.SpentSums;
import org.firmset.spend.store.ReceiptBook.Outcome;
import org.firmset.spend.table.ColumnMatch;
import org.firmset.spend.table.DateOrder;
import org.firmset.spend.table.ImportPreview;
import org.firmset.spend.table.Ledger;
import org.firmset.spend.table.ReceiptExport;
import org.firmset.spend.table.ReceiptImport;
import org.firmset.spend.table.Role;
import org.firmset.spend.table.SeedReceipts;
import org.firmset.spend.table.SpendTable;
import org.firmset.spend.table.TableReader;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What {@link ReceiptBook} promises on every database; a subclass says only which one. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ReceiptBookContract {
    private static final Homestead DEMO = SeedHomesteads.demo(LocalDate.of(2026, 12, 1));
    private static final ContentHash FILE = ContentHash.of(new byte[] {1});
    private static final byte[] PHOTO = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1, 2, 3};

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

    private static KeptReceipt stored(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Stored.class);
        return ((Outcome.Stored) outcome).receipt();
    }

    private KeptReceipt added(Receipt receipt) {
        return stored(book.add(place, receipt, List.of()));
    }

    private List<Receipt> all() {
        return book.all(place).stream().map(KeptReceipt::receipt).toList();
    }

    private static Receipt receipt(String key, long cents, Share... shares) {
        ReceiptLine line = new ReceiptLine(
                LineKind.TOOL, "Spade", null, BigDecimal.ONE, null, Cash.ofCents(cents, "USD"), List.of(shares));
        return new Receipt(
                key,
                LocalDate.of(2027, 4, 3),
                "Yard",
                ReceiptState.PAID,
                List.of(line),
                Cash.ofCents(0, "USD"),
                Cash.ofCents(0, "USD"),
                Cash.ofCents(0, "USD"),
                null,
                null);
    }

    @Nested
    class WhatWasKept {
        @Test
        void is_found_as_it_was_by_date_whatever_it_is() {
            List<Receipt> receipts = random.many(120);
            assertThat(book.takeAll(place, receipts, FILE)).isInstanceOf(Outcome.Stored.class);
            assertThat(all())
                    .isEqualTo(receipts.stream()
                            .sorted(Comparator.comparing(Receipt::date).thenComparing(Receipt::key))
                            .toList());
            KeptReceipt one = book.all(place).getFirst();
            assertThat(book.find(place, one.id())).contains(one);
        }

        /** One for the days, and four for each few hundred receipts. */
        @Test
        void is_read_with_as_many_queries_for_hundreds_of_receipts_as_for_few() {
            added(receipt("one", 100));
            long few = store.statementsDuring(() -> book.all(place));
            book.takeAll(place, random.many(150), FILE);
            assertThat(store.statementsDuring(() -> book.all(place)))
                    .isEqualTo(few)
                    .isEqualTo(5);
            book.takeAll(place, random.many(850), FILE);
            // spans of whole days: of 1,001 receipts over 700 days none holds much less than 200
            assertThat(store.statementsDuring(() -> book.each(place, k -> {}))).isEqualTo(1 + 4 * 6);
        }

        @Test
        void is_handed_over_one_by_one_in_the_order_sums_and_table_of_all_at_once() {
            List<Receipt> receipts = random.many(1_000);
            book.takeAll(place, receipts, FILE);
            List<Receipt> expected = receipts.stream()
                    .sorted(Comparator.comparing(Receipt::date).thenComparing(Receipt::key))
                    .toList();
            List<Receipt> read = new ArrayList<>();
            SpentSums sums = new SpentSums("USD");
            StringBuilder table = new StringBuilder();
            ReceiptExport export = new ReceiptExport(table);
            book.each(place, kept -> {
                read.add(kept.receipt());
                sums.add(ReceiptCosts.apart(kept.receipt()));
                export.add(kept.receipt());
            });
            assertThat(read).as("seed %d", RandomReceipts.SEED).isEqualTo(expected);
            assertThat(sums.forecast()).isEqualTo(Forecast.of("USD", expected, List.of(), List.of()));
            assertThat(table.toString()).isEqualTo(ReceiptExport.write(expected));
        }

        @Test
        void is_whole_when_all_of_many_receipts_are_of_one_day() {
            List<Receipt> receipts = random.many(450).stream()
                    .map(r -> r.withDate(LocalDate.of(2027, 4, 2)))
                    .toList();
            book.takeAll(place, receipts, FILE);
            added(receipt("r-1-later", 100).withDate(LocalDate.of(2027, 4, 3)));
            assertThat(all())
                    .hasSize(451)
                    .startsWith(receipts.stream()
                            .sorted(Comparator.comparing(Receipt::key))
                            .toArray(Receipt[]::new));
        }

        @Test
        void is_found_by_ids_as_far_as_it_is_still_there_and_of_this_homestead() {
            book.takeAll(place, random.many(30), FILE);
            List<KeptReceipt> all = book.all(place);
            UUID other = store.bean(Homesteads.class).add(DEMO).id();
            KeptReceipt others = stored(book.add(other, receipt("one", 100), List.of()));
            KeptReceipt gone = all.get(9);
            book.remove(place, gone.id(), gone.version());
            assertThat(book.some(
                            place,
                            List.of(all.get(20).id(), gone.id(), all.get(7).id(), others.id(), UUID.randomUUID())))
                    .containsExactly(all.get(7), all.get(20));
            assertThat(book.some(place, List.of())).isEmpty();
        }

        @Test
        void is_of_one_homestead_and_goes_with_it() {
            Homesteads homesteads = store.bean(Homesteads.class);
            Map<String, Long> before = store.rowCounts();
            UUID other = homesteads.add(DEMO).id();
            stored(book.add(other, receipt("one", 100, Share.all("water", null)), List.of()));
            assertThat(book.all(place)).isEmpty();
            assertThat(book.find(place, book.all(other).getFirst().id())).isEmpty();
            homesteads.remove(other);
            assertThat(store.rowCounts()).isEqualTo(before);
        }

        @Test
        void adds_up_in_plain_sql_to_the_cent_by_subproject_stage_kind_and_state() {
            book.takeAll(place, SeedReceipts.demo(DEMO, 0), FILE);
            addsUp();
            book.takeAll(place, random.many(200), FILE);
            addsUp();
        }

        @Test
        void adds_up_in_plain_sql_to_the_cent_by_the_day_it_was_paid() {
            book.takeAll(place, SeedReceipts.demo(DEMO, 0), FILE);
            book.takeAll(place, random.many(300), FILE);
            Map<LocalDate, Long> days = new HashMap<>();
            all().forEach(r -> Selected.byDay(r, ReceiptFilter.ALL)
                    .forEach(d ->
                            days.merge(d.on(), d.part().spentCents() + d.part().heldBackCents(), Long::sum)));
            assertThat(new PlainSums(store.sql()).paidByDay(place))
                    .as("seed %d", RandomReceipts.SEED)
                    .isEqualTo(days);
            assertThat(all().stream().filter(r -> r.restPaidOn().isPresent())).hasSizeGreaterThan(10);
        }

        private void addsUp() {
            PlainSums plain = new PlainSums(store.sql());
            assertThat(plain.by("subproject", place)).isEqualTo(sums((r, c) -> c.subproject()));
            assertThat(plain.by("stage", place))
                    .isEqualTo(sums((r, c) -> c.stage()))
                    .hasSizeGreaterThan(5);
            assertThat(plain.by("kind", place))
                    .isEqualTo(sums((r, c) -> c.kind().name()));
            assertThat(plain.by("state", place))
                    .isEqualTo(sums((r, c) -> r.state().name()))
                    .hasSizeGreaterThan(2);
        }

        private interface Under {
            @Nullable
            String of(Receipt receipt, ReceiptCosts.Cost cost);
        }

        private Map<String, Long> sums(Under under) {
            Map<String, Long> sums = new HashMap<>();
            all().forEach(r -> ReceiptCosts.of(r).forEach(c -> {
                String what = under.of(r, c);
                sums.merge(what == null ? "" : what, Cash.cents(c.amount()), Long::sum);
            }));
            return sums;
        }
    }

    @Nested
    class Changing {
        @Test
        void puts_another_receipt_in_its_place_under_a_new_version() {
            KeptReceipt kept = added(receipt("one", 100, Share.all("water", "water-wall"), Share.all("shop", null)));
            long before = shareRows();
            Receipt other = receipt("one", 250, Share.all("cabin", null));
            KeptReceipt changed = stored(book.change(place, kept.id(), kept.version(), other, List.of()));
            assertThat(changed.receipt()).isEqualTo(other);
            assertThat(changed.id()).isEqualTo(kept.id());
            assertThat(changed.version()).isGreaterThan(kept.version());
            assertThat(book.all(place)).containsExactly(changed);
            assertThat(shareRows()).isEqualTo(before - 1);
        }

        private long shareRows() {
            return store.sql()
                    .sql("select count(*) from receipt_share")
                    .query(Long.class)
                    .single();
        }

        @Test
        void what_somebody_changed_or_removed_meanwhile_changes_nothing() {
            KeptReceipt kept = added(receipt("one", 100));
            KeptReceipt second = stored(book.change(place, kept.id(), kept.version(), receipt("one", 200), List.of()));
            assertThat(book.change(place, kept.id(), kept.version(), receipt("one", 300), List.of()))
                    .isInstanceOf(Outcome.Outdated.class);
            assertThat(book.remove(place, kept.id(), kept.version())).isFalse();
            assertThat(book.all(place)).containsExactly(second);
            assertThat(book.remove(place, kept.id(), second.version())).isTrue();
            assertThat(book.change(place, kept.id(), second.version(), receipt("one", 300), List.of()))
                    .isInstanceOf(Outcome.Outdated.class);
        }

        @Test
        void of_two_at_the_same_time_one_is_refused() throws Exception {
            KeptReceipt kept = added(receipt("one", 100));
            List<Outcome> outcomes = together(
                    () -> book.change(place, kept.id(), kept.version(), receipt("one", 200), List.of()),
                    () -> book.change(place, kept.id(), kept.version(), receipt("one", 300), List.of()));
            assertThat(outcomes).hasAtLeastOneElementOfType(Outcome.Outdated.class);
            KeptReceipt winner = outcomes.stream()
                    .filter(Outcome.Stored.class::isInstance)
                    .map(o -> ((Outcome.Stored) o).receipt())
                    .findFirst()
                    .orElseThrow();
            assertThat(book.all(place)).containsExactly(winner);
        }

        @Test
        void keeps_the_keys_of_a_stage_and_a_subproject_that_are_gone() {
            Share gone = Share.all("moat", "moat-dig");
            assertThat(book.add(place, receipt("one", 100, gone), List.of())).isInstanceOf(Outcome.Refused.class);
            KeptReceipt kept = added(receipt("one", 100, Share.all("water", "water-wall")));
            store.sql()
                    .sql("update receipt_share set subproject = 'moat', stage = 'moat-dig' where receipt_id = ?")
                    .param(kept.id())
                    .update();
            assertThat(all()).containsExactly(receipt("one", 100, gone));
            Receipt corrected = receipt("one", 120, gone);
            assertThat(stored(book.change(place, kept.id(), kept.version(), corrected, List.of()))
                            .receipt())
                    .isEqualTo(corrected);
        }
    }

    private static List<Outcome> together(Callable<Outcome> one, Callable<Outcome> two) throws Exception {
        CountDownLatch start = new CountDownLatch(1);
        try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
            Function<Callable<Outcome>, Future<Outcome>> begin = work -> threads.submit(() -> {
                start.await();
                return work.call();
            });
            Future<Outcome> first = begin.apply(one);
            Future<Outcome> second = begin.apply(two);
            start.countDown();
            return List.of(first.get(), second.get());
        }
    }

    @Nested
    class AtTheSameTime {
        /** Two people enter what they bought on one day: forms give both receipts the same key. */
        @Test
        void two_new_receipts_of_one_key_are_both_kept() throws Exception {
            for (int i = 0; i < 5; i++) {
                together(
                        () -> book.add(place, receipt("r-day", 100), List.of()),
                        () -> book.add(place, receipt("r-day", 200), List.of()));
            }
            assertThat(all()).hasSize(10).extracting(Receipt::key).doesNotHaveDuplicates();
        }

        @Test
        void a_table_and_a_receipt_of_the_same_key_are_both_kept() throws Exception {
            List<Receipt> table = random.many(210);
            together(
                    () -> book.takeAll(place, table, FILE),
                    () -> book.add(place, receipt(table.getLast().key(), 200), List.of()));
            assertThat(all()).hasSize(211).extracting(Receipt::key).doesNotHaveDuplicates();
        }

        /** Days are read after another: whoever moves, adds or removes receipts meanwhile changes nothing of it. */
        @Test
        void what_is_read_day_by_day_is_as_it_was_when_reading_began() throws Exception {
            book.takeAll(place, random.many(450), FILE);
            List<KeptReceipt> before = book.all(place);
            List<KeptReceipt> read = new ArrayList<>();
            try (ExecutorService other = Executors.newSingleThreadExecutor()) {
                book.each(place, kept -> {
                    if (read.isEmpty()) {
                        done(other.submit(() -> turnAround(before)));
                    }
                    read.add(kept);
                });
            }
            assertThat(read).isEqualTo(before);
            assertThat(book.all(place)).hasSize(before.size()).isNotEqualTo(before);
        }

        private void turnAround(List<KeptReceipt> all) {
            move(all.getFirst(), LocalDate.of(2027, 4, 1));
            move(all.getLast(), LocalDate.of(2024, 1, 1));
            KeptReceipt middle = all.get(all.size() / 2 + 1);
            assertThat(book.remove(place, middle.id(), middle.version())).isTrue();
            added(receipt("late", 100).withDate(LocalDate.of(2027, 3, 30)));
        }

        private void move(KeptReceipt kept, LocalDate day) {
            stored(book.change(place, kept.id(), kept.version(), kept.receipt().withDate(day), List.of()));
        }

        private static void done(Future<?> work) {
            try {
                work.get();
            } catch (InterruptedException | ExecutionException e) {
                throw new IllegalStateException(e);
            }
        }

        /** A receipt is made of four queries: never the head of one version with lines of another. */
        @Test
        void a_receipt_that_is_changed_all_the_time_is_always_read_whole() throws Exception {
            Receipt one = receipt("one", 100);
            Receipt other = twoLines(one);
            KeptReceipt kept = added(one);
            AtomicBoolean reading = new AtomicBoolean(true);
            try (ExecutorService threads = Executors.newSingleThreadExecutor()) {
                Future<?> changing = threads.submit(() -> {
                    KeptReceipt now = kept;
                    for (int i = 0; reading.get(); i++) {
                        Receipt next = i % 2 == 0 ? other : one;
                        now = stored(book.change(place, now.id(), now.version(), next, List.of()));
                    }
                });
                for (int i = 0; i < 100; i++) {
                    assertThat(book.find(place, kept.id()).orElseThrow().receipt())
                            .isIn(one, other);
                }
                reading.set(false);
                done(changing);
            }
        }

        private static Receipt twoLines(Receipt one) {
            ReceiptLine line = one.lines().getFirst();
            return new Receipt(
                    one.key(),
                    one.date(),
                    "Two lines",
                    one.state(),
                    List.of(line, line),
                    Cash.ofCents(7, "USD"),
                    one.discount(),
                    one.deposit(),
                    Cash.ofCents(207, "USD"),
                    null);
        }
    }

    @Nested
    class OrdersAndDaysToCome {
        private Receipt order(@Nullable LocalDate restOn) {
            return new Receipt(
                    "order",
                    LocalDate.of(2027, 4, 3),
                    "Yard",
                    ReceiptState.ORDERED,
                    receipt("order", 10_000).lines(),
                    Cash.ofCents(0, "USD"),
                    Cash.ofCents(0, "USD"),
                    Cash.ofCents(4_000, "USD"),
                    restOn,
                    null,
                    null);
        }

        /** The clock of the store stands on 3 April 2027. */
        @Test
        void an_order_is_kept_with_the_day_its_rest_is_due_and_then_without() {
            KeptReceipt kept = added(order(LocalDate.of(2027, 9, 1)));
            assertThat(kept.receipt()).isEqualTo(order(LocalDate.of(2027, 9, 1)));
            assertThat(all()).containsExactly(order(LocalDate.of(2027, 9, 1)));
            assertThat(stored(book.change(place, kept.id(), kept.version(), order(null), List.of()))
                            .receipt())
                    .isEqualTo(order(null));
        }

        @Test
        void a_receipt_dated_after_today_is_refused_when_it_is_entered_and_when_it_is_changed() {
            Receipt tomorrow = receipt("one", 100).withDate(LocalDate.of(2027, 4, 4));
            assertThat(((Outcome.Refused) book.add(place, tomorrow, List.of())).faults())
                    .extracting(Fault::pointer, Fault::problem)
                    .containsExactly(tuple("/date", "is still to come: today is 2027-04-03"));
            KeptReceipt kept = added(receipt("one", 100));
            assertThat(book.change(place, kept.id(), kept.version(), tomorrow, List.of()))
                    .isInstanceOf(Outcome.Refused.class);
            assertThat(book.all(place)).containsExactly(kept);
            assertThat(book.ledger(place).today()).isEqualTo(LocalDate.of(2027, 4, 3));
        }

        @Test
        void the_database_itself_refuses_a_rest_before_its_order() {
            Receipt wrong = order(LocalDate.of(2027, 4, 2));
            assertThat(book.add(place, wrong, List.of())).isInstanceOf(Outcome.Refused.class);
            assertThatThrownBy(() -> store.bean(ReceiptRows.class).take(place, List.of(wrong)))
                    .isInstanceOf(PersistenceException.class);
        }
    }

    @Nested
    class Refusing {
        @Test
        void says_the_place_and_stores_nothing() {
            Map<String, Long> before = store.rowCounts();
            Receipt broken = receipt("two", 100, Share.all("moat", null));
            Outcome outcome = book.takeAll(place, List.of(receipt("one", 100), broken), FILE);
            assertThat(((Outcome.Refused) outcome).faults())
                    .extracting(Fault::pointer)
                    .containsExactly("two/lines/0/shares/0/subproject");
            assertThat(store.rowCounts()).isEqualTo(before);
        }

        /** What slips through the rules the database refuses, and not half of it stays. */
        @Test
        void an_amount_too_large_for_its_column_leaves_none_of_a_table() {
            Map<String, Long> before = store.rowCounts();
            List<Receipt> receipts = new ArrayList<>(random.many(250));
            receipts.add(receipt("huge", 10_000_000_000_000_000L));
            assertThat(book.takeAll(place, receipts, FILE)).isInstanceOf(Outcome.Refused.class);
            assertThatThrownBy(() -> store.bean(ReceiptRows.class).take(place, receipts))
                    .isInstanceOf(PersistenceException.class);
            assertThat(store.rowCounts()).isEqualTo(before);
        }
    }

    @Nested
    class TakingATable {
        @Test
        void gives_another_key_to_a_receipt_whose_key_is_taken() {
            added(receipt("one", 100));
            book.takeAll(place, List.of(receipt("one", 200), receipt("one", 300)), FILE);
            assertThat(all()).extracting(Receipt::key).containsExactly("one", "one-2", "one-3");
        }

        /** As the page does it: what the preview tells of a table makes its receipts only when they are asked for. */
        @Test
        void stores_what_was_written_and_knows_it_again() {
            List<Receipt> receipts = random.many(500);
            SpendTable table = TableReader.read(ReceiptExport.write(receipts).getBytes(StandardCharsets.UTF_8))
                    .table()
                    .orElseThrow();
            ColumnMatch match = ReceiptImport.guess(table, "USD");
            ImportPreview preview = ReceiptImport.preview(table, match, book.ledger(place));
            List<Receipt> fresh = preview.fresh().orElseThrow();
            assertThat(book.takeAll(place, fresh, table.file())).isInstanceOf(Outcome.Stored.class);
            assertThat(all()).containsExactlyInAnyOrderElementsOf(fresh);
            ImportPreview again = ReceiptImport.preview(table, match, book.ledger(place));
            assertThat(again.sameFile()).isTrue();
            assertThat(again.duplicates()).hasSize(500);
            assertThat(again.fresh().orElseThrow()).isEmpty();
        }

        @Test
        void is_remembered_with_how_its_columns_were_read() {
            ColumnMatch match = new ColumnMatch(Map.of(Role.DATE, 0), DateOrder.DAY_FIRST, Map.of(), true);
            book.takeAll(place, List.of(receipt("one", 200)), FILE);
            book.takeAll(place, List.of(receipt("two", 200)), FILE);
            book.remember(place, "print", ColumnMatch.parse("date=1"));
            book.remember(place, "print", match);
            assertThat(book.match(place, "print")).contains(match);
            assertThat(book.match(place, "other")).isEmpty();
            assertThat(book.ledger(place).files()).containsOnlyKeys(FILE);
            assertThat(book.ledger(place).receipts()).hasSize(2);
        }
    }

    /** Whoever looked before another took it in would take all of it twice. */
    @Nested
    class TakingATableThatOthersLookAtToo {
        private Outcome take(List<Receipt> receipts, Ledger looked) {
            return book.takeAll(place, receipts, FILE, looked.files());
        }

        private void isTold(Outcome outcome) {
            assertThat(((Outcome.Refused) outcome).faults())
                    .extracting(Fault::line)
                    .singleElement()
                    .satisfies(l -> assertThat(l).startsWith("The file was taken in meanwhile"));
        }

        @Test
        void is_refused_when_another_took_it_since_and_goes_on_after_another_look() {
            Ledger one = book.ledger(place);
            Ledger other = book.ledger(place);
            assertThat(take(List.of(receipt("one", 100)), one)).isInstanceOf(Outcome.Stored.class);
            Map<String, Long> before = store.rowCounts();
            isTold(take(List.of(receipt("one", 100)), other));
            assertThat(store.rowCounts()).isEqualTo(before);
            // what was left out the first time
            Ledger later = book.ledger(place);
            Ledger late = book.ledger(place);
            assertThat(take(List.of(receipt("two", 100)), later)).isInstanceOf(Outcome.Stored.class);
            isTold(take(List.of(receipt("two", 100)), late));
            isTold(take(List.of(receipt("two", 100)), other));
            assertThat(all()).extracting(Receipt::key).containsExactly("one", "two");
        }

        @Test
        void is_taken_once_when_both_take_it_at_the_same_moment() throws Exception {
            for (int i = 0; i < 10; i++) {
                List<Receipt> table = random.many(40).stream()
                        .map(r -> r.withDate(LocalDate.of(2027, 4, 3)))
                        .toList();
                int there = all().size();
                Ledger looked = book.ledger(place);
                List<Outcome> outcomes = together(() -> take(table, looked), () -> take(table, looked));
                assertThat(outcomes).as("round %d", i).hasAtLeastOneElementOfType(Outcome.Stored.class);
                isTold(outcomes.stream()
                        .filter(Outcome.Refused.class::isInstance)
                        .findFirst()
                        .orElseThrow());
                assertThat(all()).hasSize(there + 40);
            }
        }

        /** Two programs on one database do not wait for each other before they come to it. */
        @Test
        void is_taken_once_by_two_programs_too() throws Exception {
            TakenTables tables = store.bean(TakenTables.class);
            for (int i = 0; i < 10; i++) {
                ContentHash file = ContentHash.of(new byte[] {(byte) i, 7});
                List<Receipt> table = List.of(receipt("r" + i, 100));
                Callable<Outcome> take = () -> {
                    try {
                        return tables.take(place, table, file, null)
                                ? new Outcome.Stored(List.of())
                                : new Outcome.Outdated();
                    } catch (ConstraintViolationException e) {
                        return new Outcome.Outdated();
                    }
                };
                assertThat(together(take, take))
                        .as("round %d", i)
                        .filteredOn(Outcome.Stored.class::isInstance)
                        .hasSize(1);
            }
            assertThat(all()).hasSize(10);
        }
    }

    /** As an export over a slow line is. */
    @Nested
    class ReadAtLeisure {
        private int connections() {
            return ((HikariDataSource) store.bean(DataSource.class))
                    .getHikariPoolMXBean()
                    .getActiveConnections();
        }

        @Test
        void is_in_the_order_of_all_and_holds_no_connection() {
            book.takeAll(place, random.many(450), FILE);
            List<KeptReceipt> read = new ArrayList<>();
            List<Integer> connections = new ArrayList<>();
            book.eachAtLeisure(place, kept -> {
                read.add(kept);
                connections.add(connections());
            });
            assertThat(read).isEqualTo(book.all(place));
            assertThat(connections).hasSize(450).containsOnly(0);
            assertThat(store.statementsDuring(() -> book.eachAtLeisure(place, k -> {})))
                    .isEqualTo(1 + 4 * 3);
        }

        @Test
        void tells_nothing_twice_and_forgets_nothing_that_stays_when_receipts_change_meanwhile() {
            book.takeAll(place, random.many(450), FILE);
            List<KeptReceipt> before = book.all(place);
            KeptReceipt gone = before.get(300);
            List<KeptReceipt> read = new ArrayList<>();
            book.eachAtLeisure(place, kept -> {
                if (read.isEmpty()) {
                    moved(before.getFirst(), LocalDate.of(2026, 8, 1));
                    moved(before.getLast(), LocalDate.of(2025, 1, 1));
                    assertThat(book.remove(place, gone.id(), gone.version())).isTrue();
                    added(receipt("late", 100).withDate(LocalDate.of(2026, 11, 25)));
                }
                read.add(kept);
            });
            assertThat(read)
                    .extracting(KeptReceipt::id)
                    .containsExactlyElementsOf(before.stream()
                            .map(KeptReceipt::id)
                            .filter(id -> !id.equals(gone.id()))
                            .toList());
            assertThat(read.getFirst()).isEqualTo(before.getFirst());
            assertThat(read.getLast().receipt().date()).isEqualTo(LocalDate.of(2025, 1, 1));
        }

        private void moved(KeptReceipt kept, LocalDate day) {
            stored(book.change(place, kept.id(), kept.version(), kept.receipt().withDate(day), List.of()));
        }
    }

    @Nested
    class Attaching {
        private KeptDocument taken(String name) throws IOException {
            Documents.Taken taken = store.bean(Documents.class).take(name, new ByteArrayInputStream(PHOTO));
            return ((Documents.Taken.Stored) taken).document();
        }

        @Test
        void documents_come_back_with_their_receipt_in_order_and_may_be_taken_off() throws IOException {
            List<KeptDocument> two = List.of(taken("a.jpg"), taken("b.jpg"));
            KeptReceipt kept = stored(book.add(place, receipt("one", 100), two));
            assertThat(kept.documents()).isEqualTo(two);
            assertThat(book.all(place)).containsExactly(kept);
            assertThat(stored(book.change(place, kept.id(), kept.version(), kept.receipt(), two.subList(1, 2)))
                            .documents())
                    .isEqualTo(two.subList(1, 2));
        }

        @Test
        void a_document_that_is_not_there_is_refused_with_what_to_do() {
            KeptDocument unknown = new KeptDocument(FILE, org.firmset.spend.DocumentType.PDF, "x.pdf", 1);
            Outcome outcome = book.add(place, receipt("one", 100), List.of(unknown));
            assertThat(((Outcome.Refused) outcome).faults())
                    .extracting(Fault::pointer, Fault::value)
                    .containsExactly(tuple("/documents", "x.pdf"));
            assertThat(book.all(place)).isEmpty();
        }
    }
}
