package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptState;
import org.jspecify.annotations.Nullable;

/** What a receipt has once; its lines, shares and documents are rows of their own that name it. */
@Entity
@Table(name = "receipt")
class ReceiptRow {
    @Id
    private UUID id;

    @Column(name = "homestead_id", updatable = false)
    private UUID homestead;

    /** Counted by hand: a change of a line is a change of the receipt, also when this row stays as it is. */
    private long version;

    @Column(name = "key_text")
    private String key;

    private LocalDate boughtOn;
    private String supplier;

    @Enumerated(EnumType.STRING)
    private ReceiptState state;

    private String currency;
    private BigDecimal tax;
    private BigDecimal discount;
    private BigDecimal deposit;
    private @Nullable LocalDate restOn;
    private @Nullable BigDecimal total;
    private @Nullable String documentHash;

    protected ReceiptRow() {}

    ReceiptRow(UUID id, UUID homestead, Receipt record) {
        this.id = id;
        this.homestead = homestead;
        become(record);
    }

    @Initializer
    void become(Receipt record) {
        version++;
        key = record.key();
        boughtOn = record.date();
        supplier = record.supplier();
        state = record.state();
        currency = record.currency();
        tax = Cash.amountOf(record.tax());
        discount = Cash.amountOf(record.discount());
        deposit = Cash.amountOf(record.deposit());
        restOn = record.restOn();
        total = record.total() == null ? null : Cash.amountOf(record.total());
        documentHash = record.document() == null ? null : record.document().hex();
    }

    UUID id() {
        return id;
    }

    UUID homestead() {
        return homestead;
    }

    long version() {
        return version;
    }
}
