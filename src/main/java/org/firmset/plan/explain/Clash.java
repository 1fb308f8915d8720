package org.firmset.plan.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firmset.plan.Effort;
import org.firmset.plan.Planner;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Stop;

/**
 * Rules that cannot be kept together, as few as can be: without any one of them the others leave a plan.
 *
 * @param rules at least one, by kind
 * @param minimal whether it is certain that each is needed for the clash
 * @param remedies those of which each, lifted alone, is enough for a plan of the whole problem; empty when the problem has
 *     another clash besides, or it could not be found out
 */
public record Clash(List<Restriction> rules, boolean minimal, List<Restriction> remedies) {
    /** Most questions are answered at once; a proof may take the solver a moment. */
    public static final Effort EFFORT = Effort.forAny(60, 1, 1);

    /**
     * What it takes to be without a rule, the least first: a decision, then days, then things to borrow or buy, then hours
     * of people. A rule of thumb, no source.
     */
    private static final List<Kind> BY_COST = List.of(
            Kind.PIN,
            Kind.LONGEST_WAIT,
            Kind.IN_ONE_GO,
            Kind.SPENDING,
            Kind.LEAST_WAIT,
            Kind.LEAD_TIME,
            Kind.SHELF_LIFE,
            Kind.DRY_ROOM,
            Kind.TOOL,
            Kind.SEASON,
            Kind.POWER,
            Kind.VEHICLES,
            Kind.CREW,
            Kind.HOURS);

    public Clash {
        rules = List.copyOf(rules);
        remedies = List.copyOf(remedies);
    }

    /** The remedy that takes the least, by rule of thumb. */
    public Optional<Restriction> cheapest() {
        return remedies.stream().min(Comparator.comparingInt(r -> BY_COST.indexOf(r.kind())));
    }

    /**
     * The clash of a problem; empty when it has a plan, when that could not be found out, or when it would have none
     * without any of the rules either: no open date, or stages that wait for each other in a circle.
     */
    public static Optional<Clash> of(Planner planner, PlanningProblem problem, Effort effort, Stop stop) {
        return new Search(problem, new Asking(planner, effort, stop)).find();
    }

    private static final class Search {
        private final PlanningProblem problem;
        private final Asking asking;
        private final List<Restriction> kept;
        private final List<Restriction> lifted = new ArrayList<>();
        private boolean certain = true;

        Search(PlanningProblem problem, Asking asking) {
            this.problem = problem;
            this.asking = asking;
            kept = new ArrayList<>(Lifting.all(problem));
        }

        Optional<Clash> find() {
            boolean clashes = asking.ask(problem).proven()
                    && asking.ask(Lifting.without(problem, kept)).isPossible();
            if (!clashes) {
                return Optional.empty();
            }
            for (Kind kind : Kind.values()) {
                List<Restriction> ofKind =
                        kept.stream().filter(r -> r.kind() == kind).toList();
                shrink(ofKind);
            }
            return Optional.of(new Clash(kept, certain, remedies()));
        }

        /** Lifts as many as can be while the clash stays: all, or else the halves one after the other. */
        private void shrink(List<Restriction> rules) {
            if (rules.isEmpty() || clashesWithout(rules)) {
                return;
            }
            if (rules.size() > 1) {
                int half = rules.size() / 2;
                shrink(rules.subList(0, half));
                shrink(rules.subList(half, rules.size()));
            }
        }

        private boolean clashesWithout(List<Restriction> rules) {
            List<Restriction> without = new ArrayList<>(lifted);
            without.addAll(rules);
            Asking.Reply reply = rules.size() == 1
                    ? asking.insist(Lifting.without(problem, without))
                    : asking.ask(Lifting.without(problem, without));
            if (reply.proven()) {
                lifted.addAll(rules);
                kept.removeAll(rules);
                return true;
            }
            // what is neither planned nor refuted stays, and may be one too many
            certain &= reply.isPossible() || rules.size() > 1;
            return false;
        }

        private List<Restriction> remedies() {
            return kept.stream()
                    .filter(r ->
                            asking.ask(Lifting.without(problem, List.of(r))).isPossible())
                    .toList();
        }
    }
}
