package org.firmset.spend.store;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentType;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.jspecify.annotations.Nullable;

/**
 * Rows as they are only read: the columns a record is made of, in the order of the queries of {@link ReceiptReader}.
 * Entities would be looked after by Hibernate, which takes longer than reading them.
 */
final class ReceiptCells {
    private ReceiptCells() {}

    record Head(
            UUID id,
            long version,
            String key,
            LocalDate boughtOn,
            String supplier,
            ReceiptState state,
            String currency,
            BigDecimal tax,
            BigDecimal discount,
            BigDecimal deposit,
            @Nullable LocalDate restOn,
            @Nullable BigDecimal total,
            @Nullable String documentHash) {
        Receipt toRecord(List<ReceiptLine> lines) {
            return new Receipt(
                    key,
                    boughtOn,
                    supplier,
                    state,
                    lines,
                    Cash.of(tax, currency),
                    Cash.of(discount, currency),
                    Cash.of(deposit, currency),
                    restOn,
                    total == null ? null : Cash.of(total, currency),
                    documentHash == null ? null : new ContentHash(documentHash));
        }
    }

    record Line(
            UUID receipt,
            int position,
            LineKind kind,
            String text,
            @Nullable String material,
            BigDecimal quantity,
            @Nullable BigDecimal unitPrice,
            BigDecimal amount) {
        ReceiptLine toRecord(String currency, List<Share> shares) {
            return new ReceiptLine(
                    kind,
                    text,
                    material,
                    quantity,
                    unitPrice == null ? null : Cash.of(unitPrice, currency),
                    Cash.of(amount, currency),
                    shares);
        }
    }

    record LineShare(
            UUID receipt,
            int line,
            String subproject,
            @Nullable String stage,
            BigDecimal weight) {
        Share toRecord() {
            return new Share(subproject, stage, weight);
        }
    }

    record Paper(UUID receipt, String hash, DocumentType type, String name, long bytes) {
        KeptDocument toRecord() {
            return new KeptDocument(new ContentHash(hash), type, name, bytes);
        }
    }
}
