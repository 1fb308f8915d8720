package org.firmset.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One piece of work, as far as it is still to do.
 *
 * @param labourQuarters labour still to do by all people together, in quarter-hours; 0 exactly when finished
 * @param crew the least number of people who must be present
 * @param leastBlockQuarters the least labour worth starting on one day; 0 for no limit
 * @param mostBlockQuarters the most labour the stage can take on one day; {@link #NO_LIMIT} for none
 * @param wattHoursPerHour energy for each hour of labour
 * @param needsLight whether it can be done by daylight only
 * @param shut dates on which it may not work: season, conditions, papers
 * @param tools what it keeps in use on every day it works
 * @param startedOn when its first work was done, if that lies before the status date
 * @param finishedOn when it was finished, if it is
 */
public record Stage(
        String id,
        String name,
        String subproject,
        int labourQuarters,
        int crew,
        Layout layout,
        int leastBlockQuarters,
        int mostBlockQuarters,
        long wattHoursPerHour,
        boolean needsLight,
        List<Shut> shut,
        List<Need> needs,
        List<ToolUse> tools,
        @Nullable LocalDate startedOn,
        @Nullable LocalDate finishedOn) {

    public static final int NO_LIMIT = Integer.MAX_VALUE;

    public Stage {
        shut = List.copyOf(shut);
        needs = List.copyOf(needs);
        tools = List.copyOf(tools);
        Require.notNegative(labourQuarters, "labourQuarters", "stage", id);
        Require.notNegative(crew, "crew", "stage", id);
        Require.notNegative(leastBlockQuarters, "leastBlockQuarters", "stage", id);
        Require.notNegative(wattHoursPerHour, "wattHoursPerHour", "stage", id);
        Require.that(
                (labourQuarters == 0) == (finishedOn != null),
                "stage [%s] has labourQuarters [%d] and finishedOn [%s]; exactly the finished have no labour left",
                id,
                labourQuarters,
                finishedOn);
        Require.that(
                mostBlockQuarters >= 1 && mostBlockQuarters >= Math.min(leastBlockQuarters, labourQuarters),
                "mostBlockQuarters [%d] of stage [%s] must not be under its least block",
                mostBlockQuarters,
                id);
    }

    public boolean finished() {
        return finishedOn != null;
    }

    /** The least block, or what is left to do if that is less; at least one quarter-hour. */
    public int effectiveLeastBlock() {
        return Math.max(1, Math.min(leastBlockQuarters, labourQuarters));
    }

    /** Energy of a block of this stage in Wh, rounded up; the greatest number there is when it is more than that. */
    public long wattHours(int quarters) {
        if (wattHoursPerHour > Long.MAX_VALUE / Math.max(1, quarters)) {
            return Long.MAX_VALUE;
        }
        return Math.ceilDiv(wattHoursPerHour * quarters, 4);
    }

    public boolean isShutOn(LocalDate date) {
        return shut.stream().anyMatch(s -> s.covers(date));
    }

    /** The same with another crew. */
    public Stage withCrew(int changed) {
        return with(parts -> parts.crew = changed);
    }

    /** The same with other rules for how its labour may lie. */
    public Stage withBlocks(Layout changed, int leastQuarters, int mostQuarters) {
        return with(parts -> {
            parts.layout = changed;
            parts.leastBlockQuarters = leastQuarters;
            parts.mostBlockQuarters = mostQuarters;
        });
    }

    /** The same with another draw. */
    public Stage withWattHoursPerHour(long changed) {
        return with(parts -> parts.wattHoursPerHour = changed);
    }

    /** The same with other dates on which it is shut. */
    public Stage withShut(List<Shut> changed) {
        return with(parts -> parts.shut = changed);
    }

    /** The same with other needs. */
    public Stage withNeeds(List<Need> changed) {
        return with(parts -> parts.needs = changed);
    }

    /** The same with other tools. */
    public Stage withTools(List<ToolUse> changed) {
        return with(parts -> parts.tools = changed);
    }

    private Stage with(Consumer<Parts> change) {
        Parts parts = new Parts();
        change.accept(parts);
        return parts.stage();
    }

    /** What can be another in a stage that is otherwise the same. */
    private final class Parts {
        private int crew = Stage.this.crew;
        private Layout layout = Stage.this.layout;
        private int leastBlockQuarters = Stage.this.leastBlockQuarters;
        private int mostBlockQuarters = Stage.this.mostBlockQuarters;
        private long wattHoursPerHour = Stage.this.wattHoursPerHour;
        private List<Shut> shut = Stage.this.shut;
        private List<Need> needs = Stage.this.needs;
        private List<ToolUse> tools = Stage.this.tools;

        Stage stage() {
            return new Stage(
                    id,
                    name,
                    subproject,
                    labourQuarters,
                    crew,
                    layout,
                    leastBlockQuarters,
                    mostBlockQuarters,
                    wattHoursPerHour,
                    needsLight,
                    shut,
                    needs,
                    tools,
                    startedOn,
                    finishedOn);
        }
    }
}
