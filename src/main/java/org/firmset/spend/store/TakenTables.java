package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Receipt;
import org.firmset.spend.table.ColumnMatch;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tables that were taken in, and how their columns were read. */
@Service
class TakenTables {
    private final EntityManager entities;
    private final ReceiptRows rows;
    private final Clock clock;

    TakenTables(EntityManager entities, ReceiptRows rows, Clock clock) {
        this.entities = entities;
        this.rows = rows;
        this.clock = clock;
    }

    /** The receipts and that they came from this file, all or nothing. */
    @Transactional
    void take(UUID homestead, List<Receipt> receipts, ContentHash file) {
        rows.take(homestead, receipts);
        entities.merge(new TakenTableRow(
                new TakenTableRow.Id(homestead, file.hex()), clock.instant().truncatedTo(ChronoUnit.MICROS)));
    }

    @Transactional(readOnly = true)
    Set<ContentHash> files(UUID homestead) {
        return entities.createQuery("from TakenTableRow t where t.id.homestead = :homestead", TakenTableRow.class)
                .setParameter("homestead", homestead)
                .getResultStream()
                .map(row -> new ContentHash(row.file()))
                .collect(Collectors.toSet());
    }

    @Transactional(readOnly = true)
    Optional<ColumnMatch> match(UUID homestead, String fingerprint) {
        return Optional.ofNullable(entities.find(ColumnMatchRow.class, new ColumnMatchRow.Id(homestead, fingerprint)))
                .map(ColumnMatchRow::toRecord);
    }

    @Transactional
    void remember(UUID homestead, String fingerprint, ColumnMatch match) {
        entities.merge(new ColumnMatchRow(new ColumnMatchRow.Id(homestead, fingerprint), match));
    }
}
