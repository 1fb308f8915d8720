package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.firmset.spend.ContentHash;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Which files the data folder holds. */
@Service
class DocumentRows {
    private static final String UNUSED = "not exists (select 1 from AttachedRow a where a.document = d)"
            + " and not exists (select 1 from ReceiptRow r where r.documentHash = d.hash)";

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

    /** Hashes that no receipt refers to: none has it attached, none names it. */
    @Transactional(readOnly = true)
    List<ContentHash> unused() {
        return entities.createQuery("select d.hash from DocumentRow d where " + UNUSED, String.class)
                .getResultStream()
                .map(ContentHash::new)
                .toList();
    }

    /**
     * Forgets a document unless a receipt refers to it by now. Whoever is attaching it holds its row: so this waits for
     * them, and asks only then, which needs a look at what was stored meanwhile.
     *
     * @param first what else is to be done before it is forgotten; when that fails it is not
     * @return whether it is forgotten
     */
    @Transactional(isolation = Isolation.READ_COMMITTED)
    boolean forgetUnused(ContentHash hash, Runnable first) {
        DocumentRow row = entities.find(DocumentRow.class, hash.hex(), LockModeType.PESSIMISTIC_WRITE);
        boolean unused = row != null
                && !entities.createQuery("select d.hash from DocumentRow d where d.hash = :hash and " + UNUSED)
                        .setParameter("hash", hash.hex())
                        .getResultList()
                        .isEmpty();
        if (unused) {
            first.run();
            entities.remove(row);
        }
        return unused;
    }

    /** Its name is not known here: two receipts may call it differently. */
    @Transactional(readOnly = true)
    Optional<KeptDocument> find(ContentHash hash) {
        return Optional.ofNullable(entities.find(DocumentRow.class, hash.hex()))
                .map(row -> new KeptDocument(hash, row.type(), "", row.sizeBytes()));
    }
}
