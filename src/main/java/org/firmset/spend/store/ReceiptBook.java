package org.firmset.spend.store;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Keys;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptRules;
import org.firmset.spend.table.ColumnMatch;
import org.firmset.spend.table.KnownReceipt;
import org.firmset.spend.table.Ledger;
import org.hibernate.exception.ConstraintViolationException;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;

/**
 * All receipts of all homesteads. What breaks no rule is kept whole and told to whoever reckons; what is found equals
 * what was kept. A stage or subproject that was removed since stays named on its receipts. Thread-safe.
 */
@Service
public class ReceiptBook {
    /** What came of a change. */
    public sealed interface Outcome {
        /** All of it was stored. */
        record Stored(List<KeptReceipt> receipts) implements Outcome {
            public Stored {
                receipts = List.copyOf(receipts);
            }

            public KeptReceipt receipt() {
                return receipts.getFirst();
            }
        }

        /** Nothing was stored. */
        record Refused(List<Fault> faults) implements Outcome {
            public Refused {
                faults = List.copyOf(faults);
            }
        }

        /** Somebody else changed or removed it in between; nothing was stored. */
        record Outdated() implements Outcome {
            public String message() {
                return "This receipt was changed in another window in the meantime, so nothing was stored. Load the"
                        + " page again and repeat the change.";
            }
        }
    }

    /** Receipts of a homestead were added, changed or removed. */
    public record ReceiptsChanged(UUID homestead) {}

    private static final int MOST_TRIES = 5;
    private static final Fault TAKEN_MEANWHILE = new Fault(
            "",
            "",
            "was taken in meanwhile, in another tab or by somebody else",
            "Choose it again to see what is there already and what is still to be taken");

    private final Object taking = new Object();

    private final ReceiptRows rows;
    private final TakenTables tables;
    private final Homesteads homesteads;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    ReceiptBook(
            ReceiptRows rows,
            TakenTables tables,
            Homesteads homesteads,
            ApplicationEventPublisher events,
            Clock clock) {
        this.rows = rows;
        this.tables = tables;
        this.homesteads = homesteads;
        this.events = events;
        this.clock = clock;
    }

    /** All at once, by date, those of one day by key. Of very many {@link #each} needs less memory. */
    public List<KeptReceipt> all(UUID homestead) {
        List<KeptReceipt> all = new ArrayList<>();
        each(homestead, all::add);
        return List.copyOf(all);
    }

    /**
     * Hands over one receipt after the other as they are at this moment, by date, those of one day by key. A few hundred
     * are in memory at a time, or those of one day when they are more.
     *
     * @param reader keeps what it needs of each; must not ask this book for anything meanwhile, nor take its time: it
     *     holds a connection to the database
     */
    public void each(UUID homestead, Consumer<KeptReceipt> reader) {
        rows.each(homestead, reader);
    }

    /**
     * Hands them over as {@link #each} does, to a reader that may take its time, such as a slow line: no connection to
     * the database is held meanwhile. Those that are there at the beginning come in the order they have then, each at most
     * once and as it is when its turn comes, some hundred turns at a time. One that is removed before does not come, nor
     * does one that is added later.
     */
    public void eachAtLeisure(UUID homestead, Consumer<KeptReceipt> reader) {
        List<UUID> ids = rows.ids(homestead);
        for (int from = 0; from < ids.size(); from += ReceiptDays.AT_ONCE) {
            List<UUID> some = ids.subList(from, Math.min(ids.size(), from + ReceiptDays.AT_ONCE));
            Map<UUID, KeptReceipt> read =
                    rows.some(homestead, some).stream().collect(Collectors.toMap(KeptReceipt::id, kept -> kept));
            some.stream().map(read::get).filter(Objects::nonNull).forEach(reader);
        }
    }

    /** Those of these receipts that this homestead still has, by date, those of one day by key. */
    public List<KeptReceipt> some(UUID homestead, Collection<UUID> ids) {
        return ids.isEmpty() ? List.of() : rows.some(homestead, ids);
    }

    /** A receipt of this homestead. */
    public Optional<KeptReceipt> find(UUID homestead, UUID id) {
        return some(homestead, List.of(id)).stream().findFirst();
    }

    /** Adds a receipt. When its key is taken it gets a number behind it. */
    public Outcome add(UUID homestead, Receipt receipt, List<KeptDocument> documents) {
        List<Fault> faults = faults(homestead, List.of(receipt), List.of(), today());
        return faults.isEmpty()
                ? attaching(() -> stored(homestead, withFreeKeys(() -> rows.add(homestead, receipt, documents))))
                : new Outcome.Refused(faults);
    }

    /**
     * Puts this receipt in the place of the kept one. Keys that stand on the kept one may stay, also when what they
     * named is gone.
     *
     * @param version the version the change was made from
     */
    public Outcome change(UUID homestead, UUID id, long version, Receipt receipt, List<KeptDocument> documents) {
        List<Receipt> before =
                find(homestead, id).map(KeptReceipt::receipt).stream().toList();
        List<Fault> faults = faults(homestead, List.of(receipt), before, today());
        if (!faults.isEmpty()) {
            return new Outcome.Refused(faults);
        }
        return attaching(() -> rows.replace(homestead, id, version, receipt, documents)
                .map(kept -> stored(homestead, kept))
                .orElseGet(Outcome.Outdated::new));
    }

    /** Somebody else who was adding may have taken a key that was free a moment ago: then all of it is done anew. */
    private static <T> T withFreeKeys(Supplier<T> adding) {
        for (int i = 1; true; i++) {
            try {
                return adding.get();
            } catch (ConstraintViolationException e) {
                if (i == MOST_TRIES) {
                    throw e;
                }
            }
        }
    }

    private static Outcome attaching(Supplier<Outcome> change) {
        try {
            return change.get();
        } catch (DocumentGone gone) {
            return new Outcome.Refused(List.of(new Fault(
                    "/documents",
                    gone.name(),
                    "was handed in more than a day ago, kept on no receipt since, and is gone",
                    "Remove it and hand it in again")));
        }
    }

    /** Whether it was removed; not when it was changed or removed by somebody else meanwhile. */
    public boolean remove(UUID homestead, UUID id, long version) {
        boolean removed = rows.remove(homestead, id, version);
        if (removed) {
            events.publishEvent(new ReceiptsChanged(homestead));
        }
        return removed;
    }

    /** Adds all of these or none, whether or not their table was taken in before. */
    public Outcome takeAll(UUID homestead, List<Receipt> receipts, ContentHash file) {
        return takeAll(homestead, receipts, file, tables.files(homestead));
    }

    /**
     * Adds all of these or none; none either when somebody took the same table in since it was looked at. Keys that are
     * taken get a number behind them. Days to come were told when the table was looked at, on the day of its
     * {@link #ledger}; they are taken here, as the day may have changed since.
     *
     * @param receipts gone through more than once; a few hundred are in memory at a time when the list makes them itself
     * @param file the table they come from, so that it is known when it is handed in again
     * @param seen what was taken in before, as the {@link Ledger} told it that the table was looked at with
     */
    public Outcome takeAll(UUID homestead, List<Receipt> receipts, ContentHash file, Map<ContentHash, Instant> seen) {
        List<Fault> faults = faults(homestead, receipts, List.of(), null);
        if (!faults.isEmpty()) {
            return new Outcome.Refused(faults);
        }
        // one after the other: a long table would keep the next one waiting in the database until it gives up
        synchronized (taking) {
            if (!withFreeKeys(() -> tables.take(homestead, receipts, file, seen.get(file)))) {
                return new Outcome.Refused(List.of(TAKEN_MEANWHILE));
            }
        }
        events.publishEvent(new ReceiptsChanged(homestead));
        return new Outcome.Stored(List.of());
    }

    /** What a table is taken into. */
    public Ledger ledger(UUID homestead) {
        Homestead place = homestead(homestead);
        List<KnownReceipt> known = new ArrayList<>();
        each(homestead, kept -> known.add(KnownReceipt.of(kept.receipt())));
        return new Ledger(Keys.of(place), place.currency(), known, tables.files(homestead), today());
    }

    /** Which column holds what in tables with these headings, as people said the last time. */
    public Optional<ColumnMatch> match(UUID homestead, String fingerprint) {
        return tables.match(homestead, fingerprint);
    }

    public void remember(UUID homestead, String fingerprint, ColumnMatch match) {
        tables.remember(homestead, fingerprint, match);
    }

    private Outcome stored(UUID homestead, KeptReceipt kept) {
        events.publishEvent(new ReceiptsChanged(homestead));
        return new Outcome.Stored(List.of(kept));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    private Homestead homestead(UUID id) {
        return homesteads
                .find(id)
                .map(Kept::homestead)
                .orElseThrow(() -> new IllegalArgumentException("homestead [" + id + "] is not kept"));
    }

    /**
     * @param before receipts whose keys may stay
     * @param today null to take what is dated later, too
     */
    private List<Fault> faults(UUID id, List<Receipt> receipts, List<Receipt> before, @Nullable LocalDate today) {
        Homestead homestead = homestead(id);
        ReceiptRules rules = new ReceiptRules(widened(Keys.of(homestead), before), homestead.currency(), today);
        Stream<Fault> faults =
                receipts.stream().flatMap(r -> rules.faults(r, receipts.size() == 1 ? "" : r.key()).stream());
        return faults.limit(Fault.MOST).toList();
    }

    private static Keys widened(Keys keys, List<Receipt> before) {
        Set<String> subprojects = new HashSet<>(keys.subprojects());
        Map<String, String> stages = new HashMap<>(keys.stages());
        Set<String> materials = new HashSet<>(keys.materials());
        List<ReceiptLine> lines =
                before.stream().flatMap(r -> r.lines().stream()).toList();
        for (ReceiptLine line : lines) {
            Optional.ofNullable(line.material()).ifPresent(materials::add);
            line.shares().forEach(share -> {
                subprojects.add(share.subproject());
                Optional.ofNullable(share.stage()).ifPresent(stage -> stages.putIfAbsent(stage, share.subproject()));
            });
        }
        return new Keys(subprojects, stages, materials);
    }
}
