package org.firmset.season.store;

import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.firmset.homestead.file.RecordJson;
import org.firmset.measure.UnitSystem;
import org.firmset.season.money.MoneyReport;
import org.firmset.spend.Baseline;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Budgets that were kept, each for good until it is removed; a later one stands beside the earlier. Thread-safe. */
@Service
public class Baselines {
    private final EntityManager entities;
    private final Clock clock;

    Baselines(EntityManager entities, Clock clock) {
        this.entities = entities;
        this.clock = clock;
    }

    /**
     * @throws IllegalArgumentException when it could not be read again, and is not kept: it would be in the way of all
     *     others for good
     */
    @Transactional
    public KeptBaseline keep(UUID homestead, Baseline budget) {
        UUID id = UUID.randomUUID();
        String document = RecordJson.write(MoneyReport.BUDGET, budget, UnitSystem.METRIC);
        read(document);
        entities.persist(
                new BaselineRow(id, homestead, budget.on(), clock.instant().truncatedTo(ChronoUnit.MICROS), document));
        return new KeptBaseline(id, budget);
    }

    /** In the order in which they were kept. */
    @Transactional(readOnly = true)
    public List<KeptBaseline> all(UUID homestead) {
        return entities
                .createQuery(
                        "from BaselineRow b where b.homestead = :homestead order by b.madeAt, b.id", BaselineRow.class)
                .setParameter("homestead", homestead)
                .getResultList()
                .stream()
                .map(Baselines::kept)
                .toList();
    }

    /** Whether it was there. */
    @Transactional
    public boolean remove(UUID homestead, UUID id) {
        BaselineRow row = entities.find(BaselineRow.class, id);
        boolean there = row != null && row.homestead().equals(homestead);
        if (there) {
            entities.remove(row);
        }
        return there;
    }

    private static KeptBaseline kept(BaselineRow row) {
        return new KeptBaseline(row.id(), read(row.document()));
    }

    private static Baseline read(String document) {
        return RecordJson.read(MoneyReport.BUDGET, Baseline.class, document.getBytes(StandardCharsets.UTF_8));
    }
}
