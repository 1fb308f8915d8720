package org.firmset.plan.explain;

import java.util.Objects;
import java.util.Optional;
import org.firmset.plan.PlanningProblem;
import org.jspecify.annotations.Nullable;

/** One of the changes that lead from one problem to another. Equal when kind, id and both problems are. */
public final class ProblemChange {
    private final ChangeKind kind;
    private final String id;
    private final Pair pair;

    ProblemChange(ChangeKind kind, String id, Pair pair) {
        this.kind = kind;
        this.id = id;
        this.pair = pair;
    }

    public ChangeKind kind() {
        return kind;
    }

    /** Of what changed, in either of the problems; empty for what a problem has only once. */
    public String id() {
        return id;
    }

    /**
     * The problem with this change only. A stage that is to change and is not there stays away.
     *
     * @throws IllegalArgumentException when the change cannot stand alone, as a trip cannot on the dates of another
     */
    public PlanningProblem applyTo(PlanningProblem problem) {
        return new Changing(problem, pair).change(kind, id);
    }

    /** The same; empty when the change cannot stand alone. */
    public Optional<PlanningProblem> tryOn(PlanningProblem problem) {
        try {
            return Optional.of(applyTo(problem));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ProblemChange change
                && kind == change.kind
                && id.equals(change.id)
                && pair.equals(change.pair);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, id);
    }

    @Override
    public String toString() {
        return id.isEmpty() ? kind.toString() : kind + " " + id;
    }
}
