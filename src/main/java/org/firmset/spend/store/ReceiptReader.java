package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.Share;
import org.hibernate.jpa.HibernateHints;

/** Makes records of some receipts with as many queries for many as for one. */
final class ReceiptReader {
    private static final Comparator<KeptReceipt> BY_DATE = Comparator.comparing(
                    (KeptReceipt k) -> k.receipt().date())
            .thenComparing(k -> k.receipt().key());

    private final EntityManager entities;
    private final String which;
    private final UUID id;

    /** @param which the condition on the receipt r, with one parameter :id */
    ReceiptReader(EntityManager entities, String which, UUID id) {
        this.entities = entities;
        this.which = which;
        this.id = id;
    }

    /** By date, those of one day by key. */
    List<KeptReceipt> read() {
        List<ReceiptRow> receipts = rows("select r from ReceiptRow r where " + which, ReceiptRow.class);
        Map<UUID, List<ReceiptLine>> lines = lines(currencies(receipts));
        Map<UUID, List<KeptDocument>> documents = documents();
        return receipts.stream()
                .map(row -> new KeptReceipt(
                        row.id(),
                        row.version(),
                        row.toRecord(lines.getOrDefault(row.id(), List.of())),
                        documents.getOrDefault(row.id(), List.of())))
                .sorted(BY_DATE)
                .toList();
    }

    private static Map<UUID, String> currencies(List<ReceiptRow> receipts) {
        Map<UUID, String> currencies = new HashMap<>();
        receipts.forEach(r -> currencies.put(r.id(), r.currency()));
        return currencies;
    }

    private Map<UUID, List<ReceiptLine>> lines(Map<UUID, String> currencies) {
        Map<LineRow.Id, List<Share>> shares = shares();
        Map<UUID, List<ReceiptLine>> lines = new HashMap<>();
        for (LineRow row : rows(ofReceipts("LineRow") + "x.id.receipt, x.id.position", LineRow.class)) {
            UUID receipt = row.id().receipt();
            lines.computeIfAbsent(receipt, r -> new ArrayList<>())
                    .add(row.toRecord(currencies.getOrDefault(receipt, ""), shares.getOrDefault(row.id(), List.of())));
        }
        return lines;
    }

    private Map<LineRow.Id, List<Share>> shares() {
        Map<LineRow.Id, List<Share>> shares = new HashMap<>();
        rows(ofReceipts("ShareRow") + "x.id.receipt, x.id.line, x.id.position", ShareRow.class)
                .forEach(row -> shares.computeIfAbsent(row.line(), l -> new ArrayList<>())
                        .add(row.toRecord()));
        return shares;
    }

    private Map<UUID, List<KeptDocument>> documents() {
        Map<UUID, List<KeptDocument>> documents = new HashMap<>();
        String query = "select x from AttachedRow x join fetch x.document join ReceiptRow r on r.id = x.id.receipt"
                + " where " + which + " order by x.id.receipt, x.id.position";
        rows(query, AttachedRow.class)
                .forEach(row -> documents
                        .computeIfAbsent(row.receipt(), r -> new ArrayList<>())
                        .add(row.toRecord()));
        return documents;
    }

    private String ofReceipts(String rows) {
        return "select x from " + rows + " x join ReceiptRow r on r.id = x.id.receipt where " + which + " order by ";
    }

    private <R> List<R> rows(String query, Class<R> type) {
        return entities.createQuery(query, type)
                .setParameter("id", id)
                .setHint(HibernateHints.HINT_READ_ONLY, true)
                .getResultList();
    }
}
