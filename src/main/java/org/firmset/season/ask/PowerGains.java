package org.firmset.season.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Stage;
import org.firmset.plan.Subproject;
import org.firmset.plan.Totals;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/** What plans of one problem, be it with more power, bring against a plan of it. */
final class PowerGains {
    private final PlanningProblem problem;
    private final SeasonPlan base;

    PowerGains(PlanningProblem problem, SeasonPlan base) {
        this.problem = problem;
        this.base = base;
    }

    MorePower.Gain of(SeasonPlan plan) {
        return new MorePower.Gain(
                problem.subprojects().stream()
                        .flatMap(p -> finish(p, plan).stream())
                        .toList(),
                base.totals().trips() - plan.totals().trips(),
                hauling(base.totals()) - hauling(plan.totals()),
                base.totals().generatorCents() - plan.totals().generatorCents(),
                problem.stages().stream()
                        .filter(s -> trips(base, s) > 1 && trips(plan, s) == 1)
                        .map(Stage::name)
                        .toList());
    }

    /** Empty when it does not move. */
    private Optional<MorePower.Finish> finish(Subproject subproject, SeasonPlan plan) {
        LocalDate now = base.finishes().get(subproject.id());
        LocalDate then = plan.finishes().get(subproject.id());
        return now == null || then == null || now.equals(then)
                ? Optional.empty()
                : Optional.of(new MorePower.Finish(subproject.name(), now, then));
    }

    private static long hauling(Totals totals) {
        return totals.tripCents() + totals.extraRunCents() + totals.deliveryCents();
    }

    private long trips(SeasonPlan plan, Stage stage) {
        List<LocalDate> dates = plan.schedule().blocks().stream()
                .filter(b -> b.stage().equals(stage.id()))
                .map(WorkBlock::date)
                .toList();
        return problem.trips().stream().filter(t -> worked(t, dates)).count();
    }

    private static boolean worked(Trip trip, List<LocalDate> dates) {
        return dates.stream().anyMatch(d -> !d.isBefore(trip.firstDate()) && !d.isAfter(trip.lastDate()));
    }
}
