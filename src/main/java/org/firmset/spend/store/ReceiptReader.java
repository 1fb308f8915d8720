package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.Share;

/** Makes records of some receipts with four queries, however many they are. */
final class ReceiptReader {
    // not left to the database: each orders text by the rules of its own language
    private static final Comparator<KeptReceipt> BY_DATE = Comparator.comparing(
                    (KeptReceipt k) -> k.receipt().date())
            .thenComparing(k -> k.receipt().key());

    private final EntityManager entities;
    private final String which;
    private final Map<String, ?> parameters;

    /** @param which the condition on the receipt r, with these parameters */
    ReceiptReader(EntityManager entities, String which, Map<String, ?> parameters) {
        this.entities = entities;
        this.which = which;
        this.parameters = parameters;
    }

    private record LineOf(UUID receipt, int position) {}

    /** By date, those of one day by key. */
    List<KeptReceipt> read() {
        List<ReceiptCells.Head> heads = rows(
                ReceiptCells.Head.class,
                "r.id, r.version, r.key, r.boughtOn, r.supplier, r.state, r.currency, r.tax, r.discount, r.deposit,"
                        + " r.restOn, r.total, r.documentHash",
                "ReceiptRow r",
                "r.id");
        Map<UUID, List<ReceiptCells.Line>> lines = grouped(
                rows(
                        ReceiptCells.Line.class,
                        "l.id.receipt, l.id.position, l.kind, l.text, l.material, l.quantity, l.unitPrice, l.amount",
                        "LineRow l join ReceiptRow r on r.id = l.id.receipt",
                        "l.id.receipt, l.id.position"),
                ReceiptCells.Line::receipt,
                Function.identity());
        Map<LineOf, List<Share>> shares = grouped(
                rows(
                        ReceiptCells.LineShare.class,
                        "s.id.receipt, s.id.line, s.subproject, s.stage, s.weight",
                        "ShareRow s join ReceiptRow r on r.id = s.id.receipt",
                        "s.id.receipt, s.id.line, s.id.position"),
                s -> new LineOf(s.receipt(), s.line()),
                ReceiptCells.LineShare::toRecord);
        Map<UUID, List<KeptDocument>> documents = grouped(
                rows(
                        ReceiptCells.Paper.class,
                        "a.id.receipt, d.hash, d.type, a.name, d.sizeBytes",
                        "AttachedRow a join a.document d join ReceiptRow r on r.id = a.id.receipt",
                        "a.id.receipt, a.id.position"),
                ReceiptCells.Paper::receipt,
                ReceiptCells.Paper::toRecord);
        return heads.stream()
                .map(head -> new KeptReceipt(
                        head.id(),
                        head.version(),
                        head.toRecord(lines(head, lines.getOrDefault(head.id(), List.of()), shares)),
                        documents.getOrDefault(head.id(), List.of())))
                .sorted(BY_DATE)
                .toList();
    }

    private static List<ReceiptLine> lines(
            ReceiptCells.Head head, List<ReceiptCells.Line> lines, Map<LineOf, List<Share>> shares) {
        return lines.stream()
                .map(line -> line.toRecord(
                        head.currency(), shares.getOrDefault(new LineOf(line.receipt(), line.position()), List.of())))
                .toList();
    }

    private static <R, K, V> Map<K, List<V>> grouped(List<R> rows, Function<R, K> key, Function<R, V> value) {
        Map<K, List<V>> groups = new HashMap<>();
        rows.forEach(row ->
                groups.computeIfAbsent(key.apply(row), k -> new ArrayList<>()).add(value.apply(row)));
        return groups;
    }

    private <R> List<R> rows(Class<R> type, String columns, String from, String order) {
        TypedQuery<R> query = entities.createQuery(
                "select " + columns + " from " + from + " where " + which + " order by " + order, type);
        parameters.forEach(query::setParameter);
        return query.getResultList();
    }
}
