package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.firmset.plan.Need;
import org.firmset.plan.Stage;
import org.jspecify.annotations.Nullable;

/** Tells apart what of a stage changed because work was done and what because its owners see it otherwise. */
final class StageMerge {
    private StageMerge() {}

    /**
     * The stage with those of its values changed that differ between two others.
     *
     * @throws IllegalArgumentException when the values do not go together
     */
    static Stage merge(Stage stage, Stage was, Stage is) {
        return new Stage(
                stage.id(),
                pick(stage.name(), was.name(), is.name()),
                pick(stage.subproject(), was.subproject(), is.subproject()),
                pick(stage.labourQuarters(), was.labourQuarters(), is.labourQuarters()),
                pick(stage.crew(), was.crew(), is.crew()),
                pick(stage.layout(), was.layout(), is.layout()),
                pick(stage.leastBlockQuarters(), was.leastBlockQuarters(), is.leastBlockQuarters()),
                pick(stage.mostBlockQuarters(), was.mostBlockQuarters(), is.mostBlockQuarters()),
                pick(stage.wattHoursPerHour(), was.wattHoursPerHour(), is.wattHoursPerHour()),
                pick(stage.needsLight(), was.needsLight(), is.needsLight()),
                pick(stage.shut(), was.shut(), is.shut()),
                pick(stage.needs(), was.needs(), is.needs()),
                pick(stage.tools(), was.tools(), is.tools()),
                date(stage.startedOn(), was.startedOn(), is.startedOn()),
                date(stage.finishedOn(), was.finishedOn(), is.finishedOn()));
    }

    private static <T> T pick(T value, T was, T is) {
        return was.equals(is) ? value : is;
    }

    private static @Nullable LocalDate date(
            @Nullable LocalDate value, @Nullable LocalDate was, @Nullable LocalDate is) {
        return Objects.equals(was, is) ? value : is;
    }

    /**
     * The stage as it was, with the work that is recorded of it now. Less labour counts as work done only when the
     * stage has begun; before that somebody has changed an estimate.
     */
    static Stage worked(Stage was, Stage is) {
        boolean begun = is.startedOn() != null || is.finishedOn() != null;
        if (!begun || is.labourQuarters() > was.labourQuarters() || was.finished()) {
            return was;
        }
        return new Stage(
                was.id(),
                was.name(),
                was.subproject(),
                is.labourQuarters(),
                was.crew(),
                was.layout(),
                was.leastBlockQuarters(),
                was.mostBlockQuarters(),
                was.wattHoursPerHour(),
                was.needsLight(),
                was.shut(),
                is.labourQuarters() < was.labourQuarters() ? left(was.needs(), is.needs()) : was.needs(),
                was.tools(),
                is.startedOn(),
                is.finishedOn());
    }

    private static List<Need> left(List<Need> was, List<Need> is) {
        List<Need> left = new ArrayList<>();
        for (Need need : was) {
            is.stream()
                    .filter(n -> n.material().equals(need.material()))
                    .findFirst()
                    .map(n -> n.packs() < need.packs() ? n : need)
                    .ifPresent(left::add);
        }
        return left;
    }
}
