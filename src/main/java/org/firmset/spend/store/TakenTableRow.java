package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** That a table was taken in. */
@Entity
@Table(name = "receipt_table")
class TakenTableRow {
    @EmbeddedId
    private Id id;

    private Instant takenAt;

    protected TakenTableRow() {}

    TakenTableRow(Id id, Instant takenAt) {
        this.id = id;
        this.takenAt = takenAt;
    }

    @Embeddable
    record Id(
            @Column(name = "homestead_id") UUID homestead,
            @Column(name = "file_hash") String file) {}

    String file() {
        return id.file();
    }

    Instant takenAt() {
        return takenAt;
    }
}
