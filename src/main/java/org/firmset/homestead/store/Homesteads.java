package org.firmset.homestead.store;

import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/**
 * All homesteads that are kept. Every change is done whole or not at all, and what is found equals what was saved.
 *
 * <p>Keys must be unique among their kind, what is named must be there and all amounts must be in the homestead's
 * currency; a homestead that breaks this is refused with an {@link IllegalArgumentException}. Thread-safe.
 */
@Service
public class Homesteads {
    private final EntityManager entities;
    private final Clock clock;

    Homesteads(EntityManager entities, Clock clock) {
        this.entities = entities;
        this.clock = clock;
    }

    // many queries make one homestead: they must all see the same moment
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Optional<Kept> find(UUID id) {
        return Optional.ofNullable(entities.find(HomesteadRow.class, id))
                .map(row -> kept(row, new HomesteadReader(new Rows(entities, row)).read()));
    }

    /** By name. */
    @Transactional(readOnly = true)
    public List<Listed> list() {
        return entities.createQuery(
                        "select new org.firmset.homestead.store.Listed(h.id, h.name, h.changedAt) from HomesteadRow h"
                                + " order by h.name, h.id",
                        Listed.class)
                .getResultList();
    }

    /** The one that was added or opened last. */
    @Transactional(readOnly = true)
    public Optional<UUID> opened() {
        return entities.createQuery("select h.id from HomesteadRow h order by h.openedAt desc, h.id", UUID.class)
                .setMaxResults(1)
                .getResultStream()
                .findFirst();
    }

    /** Makes it the one that is shown. */
    @Transactional
    public void open(UUID id) {
        lock(id).ifPresent(row -> row.open(now()));
    }

    @Transactional
    public Kept add(Homestead homestead) {
        HomesteadRow row = new HomesteadRow(UUID.randomUUID(), homestead, now());
        entities.persist(row);
        return written(row, homestead);
    }

    /**
     * Puts this homestead in the place of the kept one. What still has its key keeps its id.
     *
     * @param expectedVersion the version this change was made from
     * @throws ChangedMeanwhile when that is no longer the latest version, or the homestead was removed
     */
    @Transactional
    public Kept replace(UUID id, long expectedVersion, Homestead homestead) {
        HomesteadRow row = lock(id).orElseThrow(() -> ChangedMeanwhile.removed(homestead.name()));
        if (row.version() != expectedVersion) {
            throw ChangedMeanwhile.since(expectedVersion, row);
        }
        row.become(homestead, now());
        return written(row, homestead);
    }

    /** Does nothing when it is not there. */
    @Transactional
    public void remove(UUID id) {
        lock(id).ifPresent(row -> new Rows(entities, row).removeAll());
    }

    /** Two changes of one homestead wait for each other, so that the second sees the version the first made. */
    private Optional<HomesteadRow> lock(UUID id) {
        return Optional.ofNullable(entities.find(HomesteadRow.class, id, LockModeType.PESSIMISTIC_WRITE));
    }

    private Kept written(HomesteadRow row, Homestead homestead) {
        new HomesteadWriter(new Rows(entities, row)).write(homestead);
        // what the database refuses it shall refuse here, not after this method has promised success
        entities.flush();
        return kept(row, homestead);
    }

    private static Kept kept(HomesteadRow row, Homestead homestead) {
        return new Kept(row.id(), row.version(), row.changedAt(), homestead);
    }

    /** As exactly as databases keep it. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
