package org.firmset.spend.store;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Receipt;
import org.firmset.spend.table.ColumnMatch;
import org.jspecify.annotations.Nullable;
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

    /**
     * The receipts and that they came from this file, all or nothing.
     *
     * @param seen when the file was taken the last time, as far as whoever takes it knows; null for never
     * @return whether it was taken; not when somebody took it since
     */
    @Transactional
    boolean take(UUID homestead, List<Receipt> receipts, ContentHash file, @Nullable Instant seen) {
        boolean mine = claim(new TakenTableRow.Id(homestead, file.hex()), seen);
        if (mine) {
            rows.take(homestead, receipts);
        }
        return mine;
    }

    /** Of two at the same moment one waits for the other here, and then its key is taken or its time is another. */
    private boolean claim(TakenTableRow.Id id, @Nullable Instant seen) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        if (seen == null) {
            if (entities.find(TakenTableRow.class, id) != null) {
                return false;
            }
            entities.persist(new TakenTableRow(id, now));
            entities.flush();
            return true;
        }
        // never the same time twice, also when a clock stands or is set back
        Instant next = now.isAfter(seen) ? now : seen.plus(1, ChronoUnit.MICROS);
        return entities.createQuery(
                                "update TakenTableRow t set t.takenAt = :next where t.id = :id and t.takenAt = :seen")
                        .setParameter("next", next)
                        .setParameter("id", id)
                        .setParameter("seen", seen)
                        .executeUpdate()
                == 1;
    }

    /** When each was taken the last time. */
    @Transactional(readOnly = true)
    Map<ContentHash, Instant> files(UUID homestead) {
        return entities.createQuery("from TakenTableRow t where t.id.homestead = :homestead", TakenTableRow.class)
                .setParameter("homestead", homestead)
                .getResultStream()
                .collect(Collectors.toMap(row -> new ContentHash(row.file()), TakenTableRow::takenAt));
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
