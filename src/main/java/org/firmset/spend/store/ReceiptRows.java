package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** The rows of receipts; every change is done whole or not at all. What is kept has been checked before. */
@Service
class ReceiptRows {
    /** Receipts written before memory is let go of. */
    private static final int AT_ONCE = 200;

    private final EntityManager entities;

    ReceiptRows(EntityManager entities) {
        this.entities = entities;
    }

    // some days are read and let go of before the next; all queries must see the same moment
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    void each(UUID homestead, Consumer<KeptReceipt> reader) {
        for (ReceiptDays days : ReceiptDays.of(entities, homestead)) {
            new ReceiptReader(
                            entities,
                            "r.homestead = :homestead and r.boughtOn between :from and :to",
                            Map.of("homestead", homestead, "from", days.from(), "to", days.to()))
                    .read()
                    .forEach(reader);
        }
    }

    private record Place(UUID id, LocalDate on, String key) {}

    /** Of all, by date, those of one day by key: sorted here, as databases have orders of their own for text. */
    @Transactional(readOnly = true)
    List<UUID> ids(UUID homestead) {
        return entities.createQuery(
                        "select r.id, r.boughtOn, r.key from ReceiptRow r where r.homestead = :homestead", Place.class)
                .setParameter("homestead", homestead)
                .getResultStream()
                .sorted(Comparator.comparing(Place::on).thenComparing(Place::key))
                .map(Place::id)
                .toList();
    }

    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    List<KeptReceipt> some(UUID homestead, Collection<UUID> ids) {
        return new ReceiptReader(
                        entities,
                        "r.homestead = :homestead and r.id in :ids",
                        Map.of("homestead", homestead, "ids", ids))
                .read();
    }

    /** Adds a receipt; a key that is taken already gets a number behind it. */
    @Transactional
    KeptReceipt add(UUID homestead, Receipt receipt, List<KeptDocument> documents) {
        ReceiptRow row =
                addAll(homestead, List.of(receipt), freeKeys(homestead)).getFirst();
        attach(row.id(), documents);
        entities.flush();
        return kept(row);
    }

    /** Adds receipts in their order, as {@link #add} does. */
    @Transactional
    void take(UUID homestead, List<Receipt> receipts) {
        FreeKeys keys = freeKeys(homestead);
        for (int from = 0; from < receipts.size(); from += AT_ONCE) {
            // copied, as the list may make each receipt anew when it is asked for it
            List<Receipt> some = List.copyOf(receipts.subList(from, Math.min(receipts.size(), from + AT_ONCE)));
            addAll(homestead, some, keys);
            entities.flush();
            entities.clear();
        }
    }

    /** Empty when the receipt has another version by now or is gone. */
    @Transactional
    Optional<KeptReceipt> replace(
            UUID homestead, UUID id, long version, Receipt receipt, List<KeptDocument> documents) {
        Optional<ReceiptRow> found = locked(homestead, id, version);
        found.ifPresent(row -> {
            row.become(receipt);
            // shares go with their lines
            delete("LineRow", id);
            delete("AttachedRow", id);
            writeLines(List.of(row), List.of(receipt));
            attach(id, documents);
            entities.flush();
        });
        return found.map(this::kept);
    }

    /** Whether it was there in this version. */
    @Transactional
    boolean remove(UUID homestead, UUID id, long version) {
        Optional<ReceiptRow> found = locked(homestead, id, version);
        found.ifPresent(entities::remove);
        return found.isPresent();
    }

    private void delete(String rows, UUID receipt) {
        entities.createQuery("delete from " + rows + " r where r.id.receipt = :id")
                .setParameter("id", receipt)
                .executeUpdate();
    }

    /** Two changes of one receipt wait for each other, so that the second sees the version the first made. */
    private Optional<ReceiptRow> locked(UUID homestead, UUID id, long version) {
        return Optional.ofNullable(entities.find(ReceiptRow.class, id, LockModeType.PESSIMISTIC_WRITE))
                .filter(row -> row.homestead().equals(homestead) && row.version() == version);
    }

    private KeptReceipt kept(ReceiptRow row) {
        entities.clear();
        return some(row.homestead(), List.of(row.id())).getFirst();
    }

    private List<ReceiptRow> addAll(UUID homestead, List<Receipt> receipts, FreeKeys keys) {
        List<ReceiptRow> rows = receipts.stream()
                .map(r -> new ReceiptRow(UUID.randomUUID(), homestead, keys.of(r)))
                .toList();
        rows.forEach(entities::persist);
        writeLines(rows, receipts);
        return rows;
    }

    private FreeKeys freeKeys(UUID homestead) {
        return new FreeKeys(new HashSet<>(
                entities.createQuery("select r.key from ReceiptRow r where r.homestead = :homestead", String.class)
                        .setParameter("homestead", homestead)
                        .getResultList()));
    }

    /** All lines before all shares, so that rows of one table go to the database together. */
    private void writeLines(List<ReceiptRow> rows, List<Receipt> receipts) {
        List<ShareRow> shares = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<ReceiptLine> lines = receipts.get(i).lines();
            for (int j = 0; j < lines.size(); j++) {
                LineRow line = new LineRow(rows.get(i).id(), j, lines.get(j));
                entities.persist(line);
                for (int k = 0; k < lines.get(j).shares().size(); k++) {
                    shares.add(new ShareRow(line.id(), k, lines.get(j).shares().get(k)));
                }
            }
        }
        shares.forEach(entities::persist);
    }

    private void attach(UUID receipt, List<KeptDocument> documents) {
        Map<ContentHash, DocumentRow> rows = held(documents);
        for (int i = 0; i < documents.size(); i++) {
            KeptDocument document = documents.get(i);
            DocumentRow row =
                    Optional.ofNullable(rows.get(document.hash())).orElseThrow(() -> new DocumentGone(document));
            entities.persist(new AttachedRow(receipt, i, row, document.name()));
        }
    }

    /** Rows that nobody removes before this transaction ends; in one order for all, so that no two wait for each other. */
    private Map<ContentHash, DocumentRow> held(List<KeptDocument> documents) {
        Map<ContentHash, DocumentRow> rows = new HashMap<>();
        documents.stream()
                .map(KeptDocument::hash)
                .distinct()
                .sorted(Comparator.comparing(ContentHash::hex))
                .forEach(hash -> Optional.ofNullable(
                                entities.find(DocumentRow.class, hash.hex(), LockModeType.PESSIMISTIC_WRITE))
                        .ifPresent(row -> rows.put(hash, row)));
        return rows;
    }
}
