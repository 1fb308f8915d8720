package org.firmset.plan.search;

import org.firmset.plan.Style;
import org.firmset.plan.Totals;

/** What a draft is worth; the smaller comes first. */
record Score(int unplaced, long over, long first, long second, long third, long unfit) implements Comparable<Score> {

    static Score of(Draft draft, Ledger ledger, Style style) {
        Model model = draft.model;
        long finishes = weightedFinishes(draft);
        Totals totals = new Costs(model, ledger).totals(draft);
        long trips = totals.trips();
        long cents = totals.cents();
        int unplaced = draft.unplaced.size();
        long over = ledger.overLimit();
        long unfit = unfit(draft);
        return switch (style) {
            case SOONEST -> new Score(unplaced, over, finishes, trips, cents, unfit);
            case FEWEST_TRIPS -> new Score(unplaced, over, trips, finishes, cents, unfit);
            case LEAST_MONEY -> new Score(unplaced, over, cents, finishes, trips, unfit);
            case LEAST_CHANGE -> new Score(unplaced, over, changes(draft), finishes, trips, unfit);
        };
    }

    /** Days by which stages finish sooner or later than in the plan before. */
    private static long changes(Draft draft) {
        long sum = 0;
        for (int s = 0; s < draft.model.stageCount; s++) {
            int former = draft.model.formerFinish[s];
            if (former != Model.NOT_PLANNED && draft.isPlaced(s)) {
                sum += Math.abs((long) draft.finishEpoch(s) - former);
            }
        }
        return sum;
    }

    /** Over all blocks how often in a thousand the weather is unfit: between plans that are alike in all else better days win. */
    private static long unfit(Draft draft) {
        int[][] unfit = draft.model.unfit;
        long sum = 0;
        for (Placement placement : draft.placed()) {
            if (unfit[placement.stage].length > 0) {
                for (Block block : placement.blocks) {
                    sum += unfit[placement.stage][block.day()];
                }
            }
        }
        return sum;
    }

    private static long weightedFinishes(Draft draft) {
        Model model = draft.model;
        int[] finish = new int[model.laneIndex.size()];
        for (int s = 0; s < model.stageCount; s++) {
            if (draft.isPlaced(s)) {
                int days = draft.finishEpoch(s) - model.statusEpoch + 1;
                finish[model.laneOf[s]] = Math.max(finish[model.laneOf[s]], days);
            }
        }
        long sum = 0;
        for (int lane = 0; lane < finish.length; lane++) {
            sum += (long) finish[lane] * model.weight(lane);
        }
        return sum;
    }

    @Override
    public int compareTo(Score other) {
        int byUnplaced = Integer.compare(unplaced, other.unplaced);
        int byOver = byUnplaced != 0 ? byUnplaced : Long.compare(over, other.over);
        int byFirst = byOver != 0 ? byOver : Long.compare(first, other.first);
        int bySecond = byFirst != 0 ? byFirst : Long.compare(second, other.second);
        int byThird = bySecond != 0 ? bySecond : Long.compare(third, other.third);
        return byThird != 0 ? byThird : Long.compare(unfit, other.unfit);
    }
}
