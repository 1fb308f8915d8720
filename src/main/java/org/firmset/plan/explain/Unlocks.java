package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.firmset.plan.CriticalPath;
import org.firmset.plan.Effort;
import org.firmset.plan.LeastWait;
import org.firmset.plan.PathLink;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Shut;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.StageStory;
import org.firmset.plan.Stop;
import org.firmset.plan.Wait;
import org.firmset.plan.WaitKind;

/**
 * What would have to change for something to be sooner by one site day, all other subprojects still finishing when they
 * do. Each answer was found by planning again without one rule: lifting that rule alone is enough.
 */
public final class Unlocks {
    /** Enough for most questions while a person waits. */
    public static final Effort EFFORT = Effort.forAny(60, 1, 1);

    private static final int MOST_SINGLES = 6;
    private static final String ASKED = "asked";

    /**
     * What came of a question.
     *
     * @param sooner the site day asked for
     * @param possible a plan without any change, where there is one after all
     * @param proven whether it is certain that no plan does it as things are
     * @param alone rules of which each, lifted alone, is enough; single ones stand before those of a whole kind
     */
    public record Finding(LocalDate sooner, Optional<SeasonPlan> possible, boolean proven, List<Restriction> alone) {
        public Finding {
            alone = List.copyOf(alone);
        }

        /** Nothing that was tried is enough by itself: the causes work together. */
        public boolean isJoint() {
            return possible.isEmpty() && alone.isEmpty();
        }
    }

    private final PlanningProblem problem;
    private final SeasonPlan plan;
    private final Asking asking;
    private final LocalDate lastDate;

    /** @param plan one of the problem */
    public Unlocks(Planner planner, PlanningProblem problem, SeasonPlan plan, Effort effort, Stop stop) {
        this.problem = problem;
        this.plan = plan;
        asking = new Asking(planner, effort, stop);
        lastDate = problem.trips().isEmpty()
                ? problem.statusDate()
                : problem.trips().getLast().lastDate();
    }

    /**
     * What would let a subproject finish one site day sooner; empty when it finishes on the first site day there is or has
     * nothing left to do.
     */
    public Optional<Finding> finish(String subproject) {
        LocalDate finish = plan.finishes().get(subproject);
        return finish == null ? Optional.empty() : before(finish).map(sooner -> finish(subproject, sooner));
    }

    private Finding finish(String subproject, LocalDate sooner) {
        return find(sooner, subproject, restricted -> {
            Map<String, LocalDate> deadlines = new HashMap<>(plan.finishes());
            restricted.lifted().stream()
                    .filter(r -> r.kind() == Kind.OTHER_FINISH)
                    .forEach(r -> forget(deadlines, r, subproject));
            deadlines.put(subproject, sooner);
            return withDeadlines(restricted.problem(), deadlines);
        });
    }

    /** What would let a stage start one site day sooner; empty when it has begun or starts on the first site day. */
    public Optional<Finding> start(String stage) {
        StageStory story = plan.story(stage).orElseThrow();
        Stage asked = stage(stage);
        if (asked.finished() || asked.startedOn() != null) {
            return Optional.empty();
        }
        return before(story.start())
                .map(sooner -> find(sooner, asked.subproject(), restricted -> {
                    Map<String, LocalDate> deadlines = new HashMap<>(plan.finishes());
                    restricted.lifted().stream()
                            .filter(r -> r.kind() == Kind.OTHER_FINISH)
                            .forEach(r -> forget(deadlines, r, asked.subproject()));
                    return startingBy(withDeadlines(restricted.problem(), deadlines), asked, sooner);
                }));
    }

    /**
     * The last site day on which a stage could start so that every subproject still finishes on its date; empty when it has
     * begun. Found by halving, as what can start late can start less late.
     */
    public Optional<LocalDate> latestStart(String stage) {
        Stage asked = stage(stage);
        if (asked.finished() || asked.startedOn() != null) {
            return Optional.empty();
        }
        LocalDate start = plan.story(stage).orElseThrow().start();
        LocalDate finish = plan.finishes().getOrDefault(asked.subproject(), start);
        List<LocalDate> later =
                siteDays().filter(d -> d.isAfter(start) && !d.isAfter(finish)).toList();
        int least = 0;
        int most = later.size() + 1;
        while (most - least > 1) {
            int middle = (least + most) / 2;
            if (startsOnOrAfter(stage, later.get(middle - 1))) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return Optional.of(least == 0 ? start : later.get(least - 1));
    }

    private boolean startsOnOrAfter(String stage, LocalDate date) {
        PlanningProblem held = withDeadlines(problem, plan.finishes());
        List<Stage> stages = held.stages().stream()
                .map(s -> s.id().equals(stage) ? from(s, date) : s)
                .toList();
        return asking.ask(held.withStages(stages)).isPossible();
    }

    private Stage from(Stage stage, LocalDate date) {
        List<Shut> shut = new ArrayList<>(stage.shut());
        shut.add(new Shut(problem.statusDate(), date.minusDays(1), "it is asked to start later"));
        return stage.withShut(shut);
    }

    private Stream<LocalDate> siteDays() {
        return problem.trips().stream().flatMap(t -> t.days().stream()).map(SiteDay::date);
    }

    private static void forget(Map<String, LocalDate> deadlines, Restriction finish, String but) {
        if (finish.isWhole()) {
            deadlines.keySet().removeIf(p -> !p.equals(but));
        } else {
            deadlines.remove(finish.id());
        }
    }

    /** A problem without some rules, before the question is put to it. */
    private record Restricted(PlanningProblem problem, List<Restriction> lifted) {}

    @FunctionalInterface
    private interface Question {
        PlanningProblem of(Restricted restricted);
    }

    private Finding find(LocalDate sooner, String subproject, Question question) {
        Asking.Reply asItIs = ask(question, List.of());
        if (asItIs.isPossible()) {
            return new Finding(sooner, asItIs.plan(), false, List.of());
        }
        List<Restriction> alone = new ArrayList<>();
        List<Restriction> all = restrictions(subproject);
        for (Kind kind : Kind.values()) {
            List<Restriction> ofKind =
                    all.stream().filter(r -> r.kind() == kind).toList();
            if (!ofKind.isEmpty() && ask(question, ofKind).isPossible()) {
                alone.addAll(singles(question, ofKind));
            }
        }
        return new Finding(sooner, Optional.empty(), asItIs.proven(), alone);
    }

    private List<Restriction> singles(Question question, List<Restriction> ofKind) {
        if (ofKind.size() == 1) {
            return ofKind;
        }
        List<Restriction> enough = ofKind.stream()
                .limit(MOST_SINGLES)
                .filter(r -> ask(question, List.of(r)).isPossible())
                .toList();
        return enough.isEmpty() ? List.of(Restriction.of(ofKind.getFirst().kind())) : enough;
    }

    private Asking.Reply ask(Question question, List<Restriction> lifted) {
        return asking.ask(question.of(new Restricted(Lifting.without(problem, lifted), lifted)));
    }

    /** Those on the critical path first, as they are the likeliest. */
    private List<Restriction> restrictions(String subproject) {
        List<Restriction> result = new ArrayList<>();
        Set<String> onPath = onPath(subproject);
        Lifting.all(problem).stream()
                .filter(r -> r.kind() != Kind.HOURS)
                .sorted(Comparator.comparing(r -> !onPath.contains(r.id())))
                .forEach(result::add);
        problem.trips().stream()
                .filter(t -> t.days().stream().anyMatch(d -> worksOn(d.date())))
                .map(t -> new Restriction(Kind.HOURS, t.id()))
                .sorted(Comparator.comparing(r -> !onPath.contains(r.id())))
                .forEach(result::add);
        plan.finishes().keySet().stream()
                .filter(p -> !p.equals(subproject))
                .sorted()
                .map(p -> new Restriction(Kind.OTHER_FINISH, p))
                .forEach(result::add);
        return result;
    }

    private boolean worksOn(LocalDate date) {
        return plan.schedule().blocks().stream().anyMatch(b -> b.date().equals(date));
    }

    /** Ids of stages, waits and trips on the path that sets the finish. */
    private Set<String> onPath(String subproject) {
        Set<String> ids = new HashSet<>();
        plan.paths().stream()
                .filter(p -> p.subproject().equals(subproject))
                .map(CriticalPath::links)
                .flatMap(List::stream)
                .forEach(link -> {
                    switch (link) {
                        case PathLink.Work work -> {
                            ids.add(work.stage());
                            tripsOf(work).forEach(ids::add);
                        }
                        case PathLink.Waiting waiting -> ids.add(waiting.waitId());
                        case PathLink.Gap gap -> {}
                    }
                });
        return ids;
    }

    private Stream<String> tripsOf(PathLink.Work work) {
        return problem.trips().stream()
                .filter(t ->
                        !t.lastDate().isBefore(work.from()) && !t.firstDate().isAfter(work.to()))
                .map(t -> t.id());
    }

    private Stage stage(String id) {
        return problem.stages().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Optional<LocalDate> before(LocalDate date) {
        return siteDays().filter(d -> d.isBefore(date)).max(Comparator.naturalOrder());
    }

    /** Stages may not work after the date their subproject is to finish on. */
    private PlanningProblem withDeadlines(PlanningProblem from, Map<String, LocalDate> deadlines) {
        return from.withStages(from.stages().stream()
                .map(s -> s.finished() ? s : until(s, deadlines.get(s.subproject())))
                .toList());
    }

    private Stage until(Stage stage, @org.jspecify.annotations.Nullable LocalDate deadline) {
        if (deadline == null || !deadline.isBefore(lastDate)) {
            return stage;
        }
        List<Shut> shut = new ArrayList<>(stage.shut());
        shut.add(new Shut(deadline.plusDays(1), lastDate, "it is asked to finish sooner"));
        return stage.withShut(shut);
    }

    /** A stage that is finished already and must be followed soon enough asks for a start by a date. */
    private PlanningProblem startingBy(PlanningProblem from, Stage asked, LocalDate date) {
        Stage mark = new Stage(
                ASKED,
                ASKED,
                asked.subproject(),
                0,
                0,
                asked.layout(),
                0,
                Stage.NO_LIMIT,
                0,
                false,
                List.of(),
                List.of(),
                List.of(),
                problem.statusDate(),
                problem.statusDate());
        List<Stage> stages = new ArrayList<>(from.stages());
        stages.add(mark);
        List<Wait> waits = new ArrayList<>(from.waits());
        int most = Math.toIntExact(date.toEpochDay() - problem.statusDate().toEpochDay());
        waits.add(new Wait(ASKED, ASKED, WaitKind.FOLLOWS, ASKED, asked.id(), new LeastWait.Days(0), most));
        return from.withStages(stages).withWaits(waits);
    }
}
