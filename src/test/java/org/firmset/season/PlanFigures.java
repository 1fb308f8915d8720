package org.firmset.season;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.firmset.plan.Bound;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedule;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stage;
import org.firmset.plan.StageStory;
import org.firmset.plan.Totals;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/** Reckons the figures of a plan again from its decisions. */
final class PlanFigures {
    private final PlanningProblem problem;
    private final SeasonPlan plan;
    private final Map<String, List<WorkBlock>> blocks;

    PlanFigures(PlanningProblem problem, SeasonPlan plan) {
        this.problem = problem;
        this.plan = plan;
        blocks = plan.schedule().blocks().stream().collect(groupingBy(WorkBlock::stage));
    }

    void finishesAreTheLatestBlocks() {
        Map<String, LocalDate> finishes = new HashMap<>();
        problem.stages().forEach(s -> finishes.merge(s.subproject(), finish(s), PlanFigures::later));
        assertThat(plan.finishes()).isEqualTo(finishes);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private LocalDate finish(Stage stage) {
        return stage.finishedOn() != null
                ? stage.finishedOn()
                : blocks.getOrDefault(stage.id(), List.of()).stream()
                        .map(WorkBlock::date)
                        .max(LocalDate::compareTo)
                        .orElseThrow();
    }

    private LocalDate start(Stage stage) {
        return Stream.concat(
                        Stream.ofNullable(stage.startedOn()),
                        blocks.getOrDefault(stage.id(), List.of()).stream().map(WorkBlock::date))
                .min(LocalDate::compareTo)
                .orElseThrow();
    }

    void storiesTellTheBlocks() {
        assertThat(plan.stories())
                .extracting(StageStory::stage)
                .isEqualTo(problem.stages().stream().map(Stage::id).toList());
        for (Stage stage : problem.stages()) {
            StageStory story = plan.story(stage.id()).orElseThrow();
            assertThat(story.start()).as("start of %s", stage.id()).isEqualTo(start(stage));
            assertThat(story.finish()).as("finish of %s", stage.id()).isEqualTo(finish(stage));
            slackIsPossible(stage, story);
        }
    }

    private void slackIsPossible(Stage stage, StageStory story) {
        assertThat(story.slackDays()).as("slack of %s", stage.id()).isNotNegative();
        assertThat(story.slackTrips()).as("slack in trips of %s", stage.id()).isNotNegative();
        if (!stage.finished()) {
            assertThat(story.finish().plusDays(story.slackDays()))
                    .as("finish of %s with all its slack used", stage.id())
                    .isBeforeOrEqualTo(Objects.requireNonNull(plan.finishes().get(stage.subproject())));
        }
    }

    void totalsAreTheSums() {
        Schedule schedule = plan.schedule();
        List<Trip> made = madeTrips();
        long wattHours =
                schedule.generator().stream().mapToLong(GeneratorUse::wattHours).sum();
        assertThat(plan.totals())
                .isEqualTo(new Totals(
                        made.size(),
                        schedule.runs().size(),
                        made.stream().mapToLong(Trip::cents).sum(),
                        extraRunCents(),
                        deliveryCents(),
                        Math.ceilDiv(wattHours * problem.site().generatorCentsPerKilowattHour(), 1000),
                        materialCents()));
    }

    private List<Trip> madeTrips() {
        Set<LocalDate> dates = Stream.concat(
                        plan.schedule().blocks().stream().map(WorkBlock::date),
                        plan.schedule().runs().stream().map(Run::date))
                .collect(toSet());
        return problem.trips().stream()
                .filter(t -> t.days().stream().anyMatch(d -> dates.contains(d.date())))
                .toList();
    }

    private long extraRunCents() {
        return plan.schedule().runs().stream()
                .filter(r -> r.kind() == RunKind.EXTRA)
                .flatMap(r -> problem.trips().stream().filter(t -> t.id().equals(r.trip())))
                .mapToLong(Trip::extraRunCents)
                .sum();
    }

    private long deliveryCents() {
        return plan.schedule().runs().stream()
                .filter(r -> r.kind() == RunKind.DELIVERY)
                .mapToLong(this::deliveryCents)
                .sum();
    }

    private long deliveryCents(Run delivery) {
        DeliveryOffer offer = problem.offers().stream()
                .filter(o -> o.id().equals(delivery.offer()))
                .findFirst()
                .orElseThrow();
        boolean small = goodsCents(delivery) < offer.leastOrderCents();
        return offer.cents() + (small ? offer.smallOrderCents() : 0);
    }

    private long goodsCents(Run run) {
        return run.loads().stream()
                .mapToLong(l -> problem.materials().stream()
                        .filter(m -> m.id().equals(l.material()))
                        .mapToLong(m -> m.cents() * l.packs())
                        .sum())
                .sum();
    }

    private long materialCents() {
        return plan.schedule().runs().stream().mapToLong(this::goodsCents).sum();
    }

    /** @param bound may be that of a plan in another style: it must hold for every plan of the problem */
    void keepTo(Bound bound) {
        bound.earliestFinish()
                .forEach((subproject, earliest) -> assertThat(plan.finishes().get(subproject))
                        .as("finish of %s", subproject)
                        .isAfterOrEqualTo(earliest));
        assertThat(plan.totals().trips()).as("trips").isGreaterThanOrEqualTo(bound.fewestTrips());
        assertThat(plan.totals().cents()).as("cents").isGreaterThanOrEqualTo(bound.leastCents());
    }
}
