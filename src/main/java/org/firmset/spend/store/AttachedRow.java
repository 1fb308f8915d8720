package org.firmset.spend.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.util.UUID;

/** That a document is one of a receipt. */
@Entity
@Table(name = "receipt_document")
class AttachedRow {
    @EmbeddedId
    private Id id;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "document_hash")
    private DocumentRow document;

    private String name;

    protected AttachedRow() {}

    AttachedRow(UUID receipt, int position, DocumentRow document, String name) {
        id = new Id(receipt, position);
        this.document = document;
        this.name = name;
    }

    @Embeddable
    record Id(
            @Column(name = "receipt_id") UUID receipt,
            @Column(name = "position") int position) {}
}
