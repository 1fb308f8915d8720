package org.firmset.season.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.plan.CriticalPath;
import org.firmset.plan.PathLink;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.StageStory;
import org.firmset.plan.Subproject;
import org.firmset.plan.Wait;
import org.firmset.season.result.SeasonReport;
import org.javamoney.moneta.Money;

/** Writes a plan with the names, units and words of its homestead. */
public final class ReportWriter {
    private final Homestead homestead;
    private final PlanningProblem problem;
    private final SeasonPlan plan;
    private final Sentences sentences;
    private final Map<String, StageStory> stories;
    private final Map<String, org.firmset.plan.Stage> stages;
    private final Set<String> criticalStages = new HashSet<>();
    private final Set<String> criticalWaits = new HashSet<>();

    private ReportWriter(Homestead homestead, PlanningProblem problem, SeasonPlan plan) {
        this.homestead = homestead;
        this.problem = problem;
        this.plan = plan;
        sentences = new Sentences(problem);
        stories = plan.stories().stream().collect(Collectors.toMap(StageStory::stage, Function.identity()));
        stages = problem.stages().stream().collect(Collectors.toMap(org.firmset.plan.Stage::id, Function.identity()));
        for (CriticalPath path : plan.paths()) {
            for (PathLink link : path.links()) {
                switch (link) {
                    case PathLink.Work w -> criticalStages.add(w.stage());
                    case PathLink.Waiting w -> criticalWaits.add(w.waitId());
                    case PathLink.Gap g -> {}
                }
            }
        }
    }

    /** @param plan the plan of {@code problem}, which was written of {@code homestead} */
    public static SeasonReport write(Homestead homestead, PlanningProblem problem, SeasonPlan plan) {
        return new ReportWriter(homestead, problem, plan).report();
    }

    private SeasonReport report() {
        List<SeasonReport.WaitPart> waits = waits();
        return new SeasonReport(
                homestead.name(),
                plan.statusDate(),
                plan.style(),
                plan.finish().orElse(null),
                plan.totals().trips(),
                plan.totals().runs(),
                costs(),
                withoutPrice(),
                new SeasonReport.Best(
                        plan.bound().fewestTrips(), money(plan.bound().leastCents()), gapPercent()),
                problem.subprojects().stream().map(this::subproject).toList(),
                new TripReportWriter(homestead, problem, plan, waits).trips(),
                homestead.stages().stream().map(this::stage).toList(),
                waits,
                plan.paths().stream()
                        .map(p -> new SeasonReport.PathPart(p.subproject(), sentences.story(p)))
                        .toList());
    }

    private Money money(long cents) {
        return Cash.ofCents(cents, homestead.currency());
    }

    /** Rounded up, so that it never promises more than is proven. */
    private BigDecimal gapPercent() {
        return BigDecimal.valueOf(100 * plan.aim().gap()).setScale(1, RoundingMode.CEILING);
    }

    private SeasonReport.Costs costs() {
        var totals = plan.totals();
        return new SeasonReport.Costs(
                money(totals.tripCents()),
                money(totals.extraRunCents()),
                money(totals.deliveryCents()),
                money(totals.generatorCents()),
                money(totals.materialCents()),
                money(totals.cents()));
    }

    private List<String> withoutPrice() {
        Set<String> priced = homestead.suppliers().stream()
                .flatMap(s -> s.prices().stream())
                .map(p -> p.material())
                .collect(Collectors.toSet());
        Set<String> needed = problem.stages().stream()
                .flatMap(s -> s.needs().stream())
                .map(n -> n.material())
                .collect(Collectors.toSet());
        return homestead.materials().stream()
                .filter(m -> needed.contains(m.key()) && !priced.contains(m.key()))
                .map(m -> m.name())
                .toList();
    }

    private SeasonReport.Part subproject(Subproject subproject) {
        List<Stage> own = homestead.stages().stream()
                .filter(s -> s.subproject().equals(subproject.id()))
                .toList();
        int done = (int) own.stream()
                .filter(s -> s.progress() != null && s.progress().finishedOn() != null)
                .count();
        return new SeasonReport.Part(
                subproject.id(),
                subproject.name(),
                plan.finishes().get(subproject.id()),
                plan.bound().earliestFinish().get(subproject.id()),
                subproject.target(),
                done,
                own.size());
    }

    private SeasonReport.StagePart stage(Stage stage) {
        StageStory story = java.util.Objects.requireNonNull(stories.get(stage.key()));
        int left = java.util.Objects.requireNonNull(stages.get(stage.key())).labourQuarters();
        return new SeasonReport.StagePart(
                stage.key(),
                stage.name(),
                stage.subproject(),
                state(stage),
                story.start(),
                story.finish(),
                new Hours(left),
                sentences.whyNotSooner(story.whyNotSooner()),
                story.slackDays(),
                story.slackTrips(),
                criticalStages.contains(stage.key()) && story.slackDays() == 0);
    }

    private SeasonReport.State state(Stage stage) {
        if (stage.progress() != null) {
            return stage.progress().finishedOn() != null ? SeasonReport.State.DONE : SeasonReport.State.BEGUN;
        }
        boolean pinned = homestead.pins().stream().anyMatch(p -> p.stage().equals(stage.key()));
        return pinned ? SeasonReport.State.PINNED : SeasonReport.State.PLANNED;
    }

    private List<SeasonReport.WaitPart> waits() {
        List<SeasonReport.WaitPart> result = new ArrayList<>();
        for (Wait wait : problem.waits()) {
            LocalDate begins =
                    java.util.Objects.requireNonNull(stories.get(wait.from())).finish();
            result.add(new SeasonReport.WaitPart(
                    wait.id(),
                    wait.name(),
                    org.firmset.homestead.WaitKind.valueOf(wait.kind().name()),
                    wait.from(),
                    wait.to(),
                    begins,
                    begins.plusDays(wait.least().daysAfter(begins)),
                    criticalWaits.contains(wait.id())));
        }
        result.sort(Comparator.comparing(SeasonReport.WaitPart::begins));
        return result;
    }
}
