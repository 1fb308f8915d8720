package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.UUID;
import org.firmset.spend.Share;
import org.jspecify.annotations.Nullable;

/** Who bears one part of a line. */
@Entity
@Table(name = "receipt_share")
class ShareRow {
    @EmbeddedId
    private Id id;

    private String subproject;
    private @Nullable String stage;
    private BigDecimal weight;

    protected ShareRow() {}

    ShareRow(LineRow.Id line, int position, Share record) {
        id = new Id(line.receipt(), line.position(), position);
        subproject = record.subproject();
        stage = record.stage();
        weight = record.weight();
    }

    @Embeddable
    record Id(
            @Column(name = "receipt_id") UUID receipt,
            @Column(name = "line_position") int line,
            @Column(name = "position") int position) {}
}
