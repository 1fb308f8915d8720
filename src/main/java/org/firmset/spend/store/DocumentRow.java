package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.firmset.spend.DocumentType;

/** A file of the data folder. */
@Entity
@Table(name = "document")
class DocumentRow {
    @Id
    private String hash;

    @Column(name = "kind")
    @Enumerated(EnumType.STRING)
    private DocumentType type;

    private long sizeBytes;

    protected DocumentRow() {}

    DocumentRow(KeptDocument record) {
        hash = record.hash().hex();
        type = record.type();
        sizeBytes = record.bytes();
    }

    String hash() {
        return hash;
    }

    DocumentType type() {
        return type;
    }

    long sizeBytes() {
        return sizeBytes;
    }
}
