package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.UUID;
import org.firmset.measure.Cash;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptLine;
import org.jspecify.annotations.Nullable;

/** One line of a receipt. */
@Entity
@Table(name = "receipt_line")
class LineRow {
    @EmbeddedId
    private Id id;

    @Enumerated(EnumType.STRING)
    private LineKind kind;

    @Column(name = "line_text")
    private String text;

    private @Nullable String material;
    private BigDecimal quantity;
    private @Nullable BigDecimal unitPrice;
    private BigDecimal amount;

    protected LineRow() {}

    LineRow(UUID receipt, int position, ReceiptLine record) {
        id = new Id(receipt, position);
        kind = record.kind();
        text = record.text();
        material = record.material();
        quantity = record.quantity();
        unitPrice = record.unitPrice() == null ? null : Cash.amountOf(record.unitPrice());
        amount = Cash.amountOf(record.amount());
    }

    @Embeddable
    record Id(
            @Column(name = "receipt_id") UUID receipt,
            @Column(name = "position") int position) {}

    Id id() {
        return id;
    }
}
