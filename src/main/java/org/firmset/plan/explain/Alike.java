package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.firmset.plan.LeastWait;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Shut;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.jspecify.annotations.Nullable;

/**
 * Says the same in the same way in two problems. Shut dates and tables of cures are often written only for the dates on
 * which somebody is there, so a new trip or a later status date makes them differ where nothing was decided anew. Where
 * they agree on what both know, both get what either knows.
 */
final class Alike {
    private final PlanningProblem before;
    private final PlanningProblem after;
    private final Set<LocalDate> datesBefore;
    private final Set<LocalDate> datesAfter;

    Alike(PlanningProblem before, PlanningProblem after) {
        this.before = before;
        this.after = after;
        datesBefore = dates(before);
        datesAfter = dates(after);
    }

    /** The problem before, in the style and with the former plan of the one after. */
    PlanningProblem start() {
        PlanningProblem.Parts draft = shared(before);
        Set<String> stages = Part.STAGES.keys(draft);
        draft.style = after.style();
        draft.odds = after.odds();
        draft.former =
                after.former().stream().filter(f -> stages.contains(f.stage())).toList();
        return draft.build();
    }

    PlanningProblem goal() {
        return shared(after).build();
    }

    private PlanningProblem.Parts shared(PlanningProblem problem) {
        PlanningProblem.Parts draft = new PlanningProblem.Parts(problem);
        PlanningProblem.Parts was = new PlanningProblem.Parts(before);
        PlanningProblem.Parts is = new PlanningProblem.Parts(after);
        draft.stages = both(Part.STAGES, draft, was, is, this::shutAlike);
        draft.waits = both(Part.WAITS, draft, was, is, Alike::leastAlike);
        return draft;
    }

    private interface Joined<T> {
        UnaryOperator<T> of(T was, T is);
    }

    private static <T> List<T> both(
            Part<T> part,
            PlanningProblem.Parts draft,
            PlanningProblem.Parts before,
            PlanningProblem.Parts after,
            Joined<T> joined) {
        List<T> result = new ArrayList<>();
        for (T each : part.in(draft)) {
            Optional<T> was = part.one(before, part.key().apply(each));
            Optional<T> is = part.one(after, part.key().apply(each));
            result.add(
                    was.isPresent() && is.isPresent()
                            ? joined.of(was.get(), is.get()).apply(each)
                            : each);
        }
        return result;
    }

    private UnaryOperator<Stage> shutAlike(Stage was, Stage is) {
        if (was.shut().equals(is.shut()) || !agree(was, is, common())) {
            return stage -> stage;
        }
        Set<LocalDate> all = new TreeSet<>(datesBefore);
        all.addAll(datesAfter);
        List<Shut> shut = new ArrayList<>();
        for (LocalDate date : all) {
            whyShut(datesBefore.contains(date) ? was : is, date).ifPresent(why -> shut.add(new Shut(date, date, why)));
        }
        return stage -> stage.withShut(shut);
    }

    private Set<LocalDate> common() {
        return datesBefore.stream().filter(datesAfter::contains).collect(Collectors.toSet());
    }

    private static boolean agree(Stage was, Stage is, Set<LocalDate> on) {
        return on.stream().allMatch(d -> whyShut(was, d).equals(whyShut(is, d)));
    }

    private static Optional<String> whyShut(Stage stage, LocalDate date) {
        return stage.shut().stream().filter(s -> s.covers(date)).findFirst().map(Shut::why);
    }

    private static UnaryOperator<Wait> leastAlike(Wait was, Wait is) {
        if (was.least() instanceof LeastWait.ByFinishDate some && is.least() instanceof LeastWait.ByFinishDate others) {
            LeastWait.@Nullable ByFinishDate joined = joined(some, others);
            return joined == null ? wait -> wait : wait -> withLeast(wait, joined);
        }
        return wait -> wait;
    }

    static Wait withLeast(Wait wait, LeastWait least) {
        return new Wait(wait.id(), wait.name(), wait.kind(), wait.from(), wait.to(), least, wait.mostDays());
    }

    /** A table with what either knows; null when they disagree or leave a gap between them. */
    static LeastWait.@Nullable ByFinishDate joined(LeastWait.ByFinishDate some, LeastWait.ByFinishDate others) {
        boolean someFirst = !some.first().isAfter(others.first());
        LeastWait.ByFinishDate one = someFirst ? some : others;
        LeastWait.ByFinishDate two = someFirst ? others : some;
        long offset = two.first().toEpochDay() - one.first().toEpochDay();
        if (offset > one.days().size()) {
            return null;
        }
        List<Integer> days = new ArrayList<>(one.days());
        for (int i = 0; i < two.days().size(); i++) {
            int at = Math.toIntExact(offset) + i;
            if (at == days.size()) {
                days.add(two.days().get(i));
            } else if (!Objects.equals(days.get(at), two.days().get(i))) {
                return null;
            }
        }
        return new LeastWait.ByFinishDate(one.first(), days);
    }

    /** Writes as the problem after does what comes to the same in the draft. */
    void writeAsAfter(PlanningProblem.Parts draft) {
        PlanningProblem.Parts goal = new PlanningProblem.Parts(after);
        Set<LocalDate> known = dates(draft.trips);
        known.retainAll(datesBefore);
        Part.STAGES.replace(
                draft,
                s -> Part.STAGES
                        .one(goal, s.id())
                        .filter(is -> s.withShut(is.shut()).equals(is) && agree(s, is, known))
                        .orElse(s));
        Part.WAITS.replace(
                draft,
                w -> Part.WAITS
                        .one(goal, w.id())
                        .filter(is -> sameWait(w, is) && covers(is, draft))
                        .orElse(w));
        order(draft, goal);
    }

    private static boolean sameWait(Wait wait, Wait is) {
        return withLeast(wait, is.least()).equals(is)
                && wait.least() instanceof LeastWait.ByFinishDate some
                && is.least() instanceof LeastWait.ByFinishDate others
                && joined(some, others) != null;
    }

    /** Whether the table knows the site dates of a draft, so that no finish falls outside it that did not before. */
    private boolean covers(Wait is, PlanningProblem.Parts draft) {
        return draft.trips.equals(after.trips())
                || (is.least() instanceof LeastWait.ByFinishDate table
                        && dates(draft.trips).stream().allMatch(d -> knows(table, d)));
    }

    /**
     * Whether every table of waits knows the dates on which the stage before can finish, or did. A change that brings a
     * date may lack the days of its cures.
     */
    static boolean tablesReach(PlanningProblem problem) {
        Set<LocalDate> siteDates = dates(problem);
        Map<String, LocalDate> finished = new HashMap<>();
        for (Stage stage : problem.stages()) {
            if (stage.finishedOn() != null) {
                finished.put(stage.id(), stage.finishedOn());
            }
        }
        for (Wait wait : problem.waits()) {
            @Nullable LocalDate finish = finished.get(wait.from());
            Set<LocalDate> finishes = finish == null ? siteDates : Set.of(finish);
            if (wait.least() instanceof LeastWait.ByFinishDate table
                    && !finishes.stream().allMatch(d -> knows(table, d))) {
                return false;
            }
        }
        return true;
    }

    private static boolean knows(LeastWait.ByFinishDate table, LocalDate date) {
        return !date.isBefore(table.first())
                && date.isBefore(table.first().plusDays(table.days().size()));
    }

    private static void order(PlanningProblem.Parts draft, PlanningProblem.Parts goal) {
        Part.SUBPROJECTS.order(draft, goal);
        Part.STAGES.order(draft, goal);
        Part.WAITS.order(draft, goal);
        Part.MATERIALS.order(draft, goal);
        Part.OFFERS.order(draft, goal);
        Part.PINS.order(draft, goal);
        Part.TOOLS.order(draft, goal);
        Part.FORMER.order(draft, goal);
    }

    private static Set<LocalDate> dates(PlanningProblem problem) {
        return dates(problem.trips());
    }

    private static Set<LocalDate> dates(List<Trip> trips) {
        return trips.stream()
                .flatMap(t -> t.days().stream())
                .map(d -> d.date())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
