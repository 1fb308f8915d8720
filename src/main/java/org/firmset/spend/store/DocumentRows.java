package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import java.util.Optional;
import org.firmset.spend.ContentHash;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which files the data folder holds. */
@Service
class DocumentRows {
    private final EntityManager entities;

    DocumentRows(EntityManager entities) {
        this.entities = entities;
    }

    @Transactional
    void note(KeptDocument document) {
        if (entities.find(DocumentRow.class, document.hash().hex()) == null) {
            entities.persist(new DocumentRow(document));
        }
    }

    /** Its name is not known here: two receipts may call it differently. */
    @Transactional(readOnly = true)
    Optional<KeptDocument> find(ContentHash hash) {
        return Optional.ofNullable(entities.find(DocumentRow.class, hash.hex()))
                .map(row -> new KeptDocument(hash, row.type(), "", row.sizeBytes()));
    }
}
