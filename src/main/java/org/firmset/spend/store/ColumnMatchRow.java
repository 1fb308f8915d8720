package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.UUID;
import org.firmset.spend.table.ColumnMatch;

/** Which column holds what in tables with certain headings. */
@Entity
@Table(name = "column_match")
class ColumnMatchRow {
    @EmbeddedId
    private Id id;

    @Column(name = "match_text")
    private String match;

    protected ColumnMatchRow() {}

    ColumnMatchRow(Id id, ColumnMatch record) {
        this.id = id;
        become(record);
    }

    @Embeddable
    record Id(
            @Column(name = "homestead_id") UUID homestead,
            @Column(name = "fingerprint") String fingerprint) {}

    @Initializer
    void become(ColumnMatch record) {
        match = record.text();
    }

    Id id() {
        return id;
    }

    ColumnMatch toRecord() {
        return ColumnMatch.parse(match);
    }
}
