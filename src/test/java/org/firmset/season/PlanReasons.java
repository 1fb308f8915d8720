package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.plan.CriticalPath;
import org.firmset.plan.PathLink;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Reason;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.StageStory;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.plan.WorkBlock;

/** Looks whether what a plan says about itself is so: why not sooner, and what sets each finish. */
final class PlanReasons {
    private final PlanningProblem problem;
    private final SeasonPlan plan;
    private final List<SiteDay> days;

    PlanReasons(PlanningProblem problem, SeasonPlan plan) {
        this.problem = problem;
        this.plan = plan;
        days = problem.trips().stream().flatMap(t -> t.days().stream()).toList();
    }

    void everyReasonIsTrue() {
        for (Stage stage : problem.stages()) {
            StageStory story = plan.story(stage.id()).orElseThrow();
            assertThat(isTrue(story.whyNotSooner(), stage, story))
                    .as("%s, which starts on %s: %s", stage.id(), story.start(), story.whyNotSooner())
                    .isTrue();
        }
    }

    private boolean isTrue(Reason reason, Stage stage, StageStory story) {
        LocalDate sooner = sooner(story.start());
        return switch (reason) {
            case Reason.Begun begun ->
                begun.on().equals(stage.startedOn()) || begun.on().equals(stage.finishedOn());
            case Reason.FirstSiteDay first ->
                first.date().equals(story.start())
                        && first.date().equals(days.getFirst().date());
            case Reason.Waiting waiting -> waiting.ready().isAfter(sooner) && isReady(waiting, stage);
            case Reason.Held held ->
                held.sooner().equals(sooner)
                        && problem.pins().stream()
                                .anyMatch(p -> p.stage().equals(stage.id())
                                        && !p.dates().contains(sooner));
            case Reason.ShutThen shut -> shut.sooner().equals(sooner) && stage.isShutOn(sooner);
            case Reason.CrewShort crew ->
                crew.sooner().equals(sooner)
                        && crew.present() == day(sooner).people()
                        && crew.present() < crew.needed()
                        && crew.needed() == stage.crew();
            case Reason.HoursTaken taken -> hoursAreTaken(taken, stage);
            case Reason.PowerShort power -> power.sooner().equals(sooner) && power.neededWattHours() > 0;
            case Reason.NotOnSite missing ->
                missing.sooner().equals(sooner)
                        && stage.needs().stream().anyMatch(n -> n.material().equals(missing.material()));
            case Reason.ToolTaken tool ->
                tool.sooner().equals(sooner)
                        && stage.tools().stream().anyMatch(u -> u.tool().equals(tool.tool()));
            case Reason.MoneyShort money -> money.sooner().equals(sooner) && problem.spending() != null;
            case Reason.TripNotMade trip -> trip.sooner().equals(sooner) && nothingHappensOnTripOf(sooner);
            case Reason.NoGain gain -> gain.sooner().equals(sooner);
        };
    }

    private LocalDate sooner(LocalDate start) {
        return days.stream()
                .map(SiteDay::date)
                .filter(d -> d.isBefore(start))
                .reduce((a, b) -> b)
                .orElse(LocalDate.MIN);
    }

    private SiteDay day(LocalDate date) {
        return days.stream().filter(d -> d.date().equals(date)).findFirst().orElseThrow();
    }

    private boolean isReady(Reason.Waiting waiting, Stage stage) {
        Wait wait = wait(waiting.waitId());
        LocalDate before = plan.story(wait.from()).orElseThrow().finish();
        return wait.to().equals(stage.id())
                && wait.from().equals(waiting.stageBefore())
                && waiting.ready().equals(before.plusDays(wait.least().daysAfter(before)));
    }

    private Wait wait(String id) {
        return problem.waits().stream()
                .filter(w -> w.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private boolean hoursAreTaken(Reason.HoursTaken taken, Stage stage) {
        boolean otherWork = taken.byStages().stream()
                .allMatch(other -> !other.equals(stage.id())
                        && plan.schedule().blocks().stream()
                                .anyMatch(
                                        b -> b.stage().equals(other) && b.date().equals(taken.sooner())));
        return otherWork
                && taken.leftQuarters() >= 0
                && taken.leftQuarters() <= day(taken.sooner()).labourQuarters();
    }

    private boolean nothingHappensOnTripOf(LocalDate date) {
        Trip trip = problem.trips().stream()
                .filter(t -> t.days().stream().anyMatch(d -> d.date().equals(date)))
                .findFirst()
                .orElseThrow();
        return Stream.concat(
                        plan.schedule().blocks().stream().map(b -> b.date()),
                        plan.schedule().runs().stream().map(r -> r.date()))
                .noneMatch(d -> !d.isBefore(trip.firstDate()) && !d.isAfter(trip.lastDate()));
    }

    /** One path for each subproject with work left, each link starting no sooner than the one before it. */
    void pathsLeadToTheFinishes() {
        List<String> withWork = problem.stages().stream()
                .filter(s -> !s.finished())
                .map(Stage::subproject)
                .distinct()
                .toList();
        assertThat(plan.paths()).extracting(CriticalPath::subproject).containsExactlyInAnyOrderElementsOf(withWork);
        for (CriticalPath path : plan.paths()) {
            leadsToTheFinish(path);
            path.links().forEach(this::tellsThePlan);
        }
    }

    private void leadsToTheFinish(CriticalPath path) {
        assertThat(path.links()).as("path of %s", path.subproject()).isNotEmpty();
        PathLink last = path.links().getLast();
        assertThat(last).as("last link").isInstanceOf(PathLink.Work.class);
        assertThat(last.to()).as("end of %s", path).isEqualTo(plan.finishes().get(path.subproject()));
        Optional<PathLink> before = Optional.empty();
        for (PathLink link : path.links()) {
            LocalDate notBefore = before.map(PathLink::from).orElse(LocalDate.MIN);
            assertThat(link.from()).as("start of %s in %s", link, path).isBetween(notBefore, link.to());
            before = Optional.of(link);
        }
    }

    private LocalDate plannedStart(StageStory story) {
        return plan.schedule().blocks().stream()
                .filter(b -> b.stage().equals(story.stage()))
                .map(WorkBlock::date)
                .min(LocalDate::compareTo)
                .orElse(story.start());
    }

    private void tellsThePlan(PathLink link) {
        switch (link) {
            case PathLink.Work work -> {
                StageStory story = plan.story(work.stage()).orElseThrow();
                assertThat(work.from()).as("start of %s", work).isEqualTo(plannedStart(story));
                assertThat(work.to()).as("end of %s", work).isEqualTo(story.finish());
            }
            case PathLink.Waiting waiting -> {
                Wait wait = wait(waiting.waitId());
                LocalDate finish = plan.story(wait.from()).orElseThrow().finish();
                assertThat(waiting.from()).as("start of %s", waiting).isEqualTo(finish);
                assertThat(waiting.to())
                        .as("end of %s", waiting)
                        .isEqualTo(finish.plusDays(wait.least().daysAfter(finish)));
            }
            case PathLink.Gap gap ->
                assertThat(gap.from()).as("start of %s", gap).isBefore(gap.to());
        }
    }
}
