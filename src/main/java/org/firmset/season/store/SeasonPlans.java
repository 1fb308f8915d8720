package org.firmset.season.store;

import jakarta.persistence.EntityManager;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.firmset.homestead.file.RecordJson;
import org.firmset.measure.UnitSystem;
import org.firmset.season.result.SeasonReport;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Season plans that are kept: the first of each homestead for good, of the others the latest. Thread-safe. */
@Service
public class SeasonPlans {
    private static final Logger LOG = LoggerFactory.getLogger(SeasonPlans.class);
    private static final int KEPT_BESIDES_THE_FIRST = 30;

    private final EntityManager entities;
    private final Clock clock;

    SeasonPlans(EntityManager entities, Clock clock) {
        this.entities = entities;
        this.clock = clock;
    }

    @Transactional
    public KeptPlan keep(UUID homestead, long homesteadVersion, SeasonReport report) {
        KeptPlan plan =
                new KeptPlan(homestead, homesteadVersion, clock.instant().truncatedTo(ChronoUnit.MICROS), report);
        entities.persist(new SeasonPlanRow(
                UUID.randomUUID(), plan, RecordJson.write(SeasonReport.HEADING, report, UnitSystem.METRIC)));
        List<SeasonPlanRow> rows = rows(homestead);
        rows.stream()
                .skip(1)
                .limit(Math.max(0, rows.size() - 1 - KEPT_BESIDES_THE_FIRST))
                .forEach(entities::remove);
        return plan;
    }

    @Transactional(readOnly = true)
    public Optional<KeptPlan> latest(UUID homestead) {
        return firstOf(rows(homestead).reversed().stream());
    }

    /** The plan as first agreed. */
    @Transactional(readOnly = true)
    public Optional<KeptPlan> first(UUID homestead) {
        return firstOf(rows(homestead).stream());
    }

    /** The latest plan of a state of the homestead before this one. */
    @Transactional(readOnly = true)
    public Optional<KeptPlan> before(UUID homestead, long homesteadVersion) {
        return firstOf(rows(homestead).reversed().stream().filter(row -> row.homesteadVersion() < homesteadVersion));
    }

    private List<SeasonPlanRow> rows(UUID homestead) {
        return entities.createQuery(
                        "from SeasonPlanRow p where p.homestead = :homestead order by p.madeAt, p.id",
                        SeasonPlanRow.class)
                .setParameter("homestead", homestead)
                .getResultList();
    }

    /** Of those that can be read: one that another version of the program kept is passed over, and stays as it is. */
    private static Optional<KeptPlan> firstOf(Stream<SeasonPlanRow> rows) {
        return rows.flatMap(row -> kept(row).stream()).findFirst();
    }

    private static Optional<KeptPlan> kept(SeasonPlanRow row) {
        byte[] document = row.document().getBytes(StandardCharsets.UTF_8);
        return switch (RecordJson.reading(SeasonReport.HEADING, SeasonReport.class, document)) {
            case RecordJson.Read.Whole<SeasonReport> whole ->
                Optional.of(new KeptPlan(row.homestead(), row.homesteadVersion(), row.madeAt(), whole.content()));
            case RecordJson.Read.Broken<SeasonReport> broken -> {
                LOG.info(
                        "A plan that was kept at {} cannot be read by this version and is passed over: {}",
                        row.madeAt(),
                        broken.fault().line());
                yield Optional.empty();
            }
        };
    }
}
