package org.firmset.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.plan.Effort;
import org.firmset.plan.Outcome;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Style;
import org.firmset.plan.search.ConstructivePlanner;
import org.firmset.season.problem.ProblemWriter;

/** A homestead with what planning makes of it in each style, worked out when it is asked for. */
final class Trial {
    static final Effort SMALL_EFFORT = new Effort(30, 1);

    private final Homestead homestead;
    private final LocalDate statusDate;
    private final Map<Style, PlanningProblem> problems = new EnumMap<>(Style.class);
    private final Map<Style, Outcome> outcomes = new EnumMap<>(Style.class);

    Trial(Homestead homestead, LocalDate statusDate) {
        this.homestead = homestead;
        this.statusDate = statusDate;
    }

    Homestead homestead() {
        return homestead;
    }

    LocalDate statusDate() {
        return statusDate;
    }

    PlanningProblem problem(Style style) {
        return problems.computeIfAbsent(style, s -> ProblemWriter.write(homestead, statusDate, s));
    }

    Outcome outcome(Style style) {
        return outcomes.computeIfAbsent(style, s -> new ConstructivePlanner().plan(problem(s), SMALL_EFFORT));
    }

    Optional<SeasonPlan> plan(Style style) {
        return outcome(style) instanceof Outcome.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }
}
