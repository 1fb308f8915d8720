package org.firmset.plan.search;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.firmset.plan.Effort;
import org.firmset.plan.Progress;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.jspecify.annotations.Nullable;

/**
 * The best plan for the owner's style among all that were looked at. The search is led by each style in turn, whichever
 * was chosen, so all styles choose among the same plans, and none can beat another at its own aim.
 */
final class Champion {
    private final Style style;
    private @Nullable Genes genes;
    private @Nullable Score score;

    private Champion(Style style) {
        this.style = style;
    }

    /** A longer look begins with the usual one, so that its plan is never the worse. */
    static Genes find(Model model, Windows windows, Effort effort, Progress progress, Stop stop) {
        Champion champion = new Champion(model.style);
        int usual = Math.min(effort.plans(), Effort.NORMAL.plans());
        champion.look(
                model, windows, new Effort(usual, effort.seed(), 0, effort.any()), progress, 0, effort.plans(), stop);
        if (effort.plans() > usual) {
            long seed = effort.seed() + Style.values().length;
            Effort more = new Effort(effort.plans() - usual, seed, 0, effort.any());
            champion.look(model, windows, more, progress, usual, effort.plans(), stop);
        }
        return Objects.requireNonNull(champion.genes, "every search looks at one plan at least");
    }

    private void look(Model model, Windows windows, Effort effort, Progress progress, int done, int inAll, Stop stop) {
        List<Style> guides = guides(model);
        for (int i = 0; i < guides.size() && (genes == null || !stop.isStopped()); i++) {
            int before = effort.plans() * i / guides.size();
            int plans = Math.max(1, effort.plans() * (i + 1) / guides.size() - before);
            Effort share = new Effort(plans, effort.seed() + i, 0, effort.any());
            Progress shared = (built, of) -> progress.built(Math.min(done + before + built, inAll), inAll);
            if (effort.any() && hasPlan()) {
                return;
            }
            new Search(model, windows, share, guides.get(i), this, shared, stop).run();
        }
    }

    /** Without a plan before, there is nothing to keep to. */
    private static List<Style> guides(Model model) {
        boolean keeps = model.style == Style.LEAST_CHANGE;
        return Arrays.stream(Style.values())
                .filter(s -> s != Style.LEAST_CHANGE || keeps)
                .toList();
    }

    /** Whether a plan is known in which every stage has its place, within the limit to what is spent. */
    boolean hasPlan() {
        return score != null && score.unplaced() == 0 && score.over() == 0;
    }

    /** Takes a copy when it is the best so far. */
    void offer(Genes offered, Draft draft, Ledger ledger) {
        Score reached = Score.of(draft, ledger, style);
        if (score == null || reached.compareTo(score) < 0) {
            score = reached;
            genes = offered.copy();
        }
    }
}
