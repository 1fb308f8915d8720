package org.firmset.plan.check;

import static java.util.stream.Collectors.groupingBy;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.Schedule;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/** A problem and a schedule side by side, looked up by id and by date. */
final class Facts {
    private final PlanningProblem problem;
    private final Schedule schedule;
    private final Map<String, Stage> stages;
    private final Map<String, Material> materials;
    private final Map<String, Trip> trips;
    private final Map<String, DeliveryOffer> offers;
    private final Map<LocalDate, SiteDay> siteDays = new HashMap<>();
    private final Map<String, List<WorkBlock>> blocksByStage;
    private final Map<LocalDate, List<WorkBlock>> blocksByDate;

    Facts(PlanningProblem problem, Schedule schedule) {
        this.problem = problem;
        this.schedule = schedule;
        stages = byId(problem.stages(), Stage::id);
        materials = byId(problem.materials(), Material::id);
        trips = byId(problem.trips(), Trip::id);
        offers = byId(problem.offers(), DeliveryOffer::id);
        problem.trips().forEach(t -> t.days().forEach(d -> siteDays.put(d.date(), d)));
        blocksByStage = schedule.blocks().stream()
                .sorted(Comparator.comparing(WorkBlock::date))
                .collect(groupingBy(WorkBlock::stage));
        blocksByDate = schedule.blocks().stream().collect(groupingBy(WorkBlock::date));
    }

    private static <T> Map<String, T> byId(List<T> parts, Function<T, String> id) {
        return parts.stream().collect(Collectors.toMap(id, Function.identity()));
    }

    PlanningProblem problem() {
        return problem;
    }

    Schedule schedule() {
        return schedule;
    }

    Optional<Stage> stage(String id) {
        return Optional.ofNullable(stages.get(id));
    }

    Optional<Material> material(String id) {
        return Optional.ofNullable(materials.get(id));
    }

    Optional<Trip> trip(String id) {
        return Optional.ofNullable(trips.get(id));
    }

    Optional<DeliveryOffer> offer(String id) {
        return Optional.ofNullable(offers.get(id));
    }

    Optional<SiteDay> siteDay(LocalDate date) {
        return Optional.ofNullable(siteDays.get(date));
    }

    /** The blocks of a stage, ascending by date. */
    List<WorkBlock> blocksOf(String stage) {
        return blocksByStage.getOrDefault(stage, List.of());
    }

    List<WorkBlock> blocksOn(LocalDate date) {
        return blocksByDate.getOrDefault(date, List.of());
    }

    /** What a run carries, without the loads that {@link LoadRules} finds to be no packs at all. */
    List<Cargo> cargo(Run run) {
        return run.loads().stream()
                .filter(load -> load.packs() > 0)
                .flatMap(load -> material(load.material()).map(m -> new Cargo(load, m)).stream())
                .toList();
    }
}
