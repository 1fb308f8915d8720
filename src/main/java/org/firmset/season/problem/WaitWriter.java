package org.firmset.season.problem;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.homestead.Cure;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Progress;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Wait;
import org.firmset.plan.LeastWait;
import org.firmset.plan.WaitKind;
import org.firmset.season.day.Climate;
import org.firmset.trade.cure.CureTable;
import org.firmset.trade.cure.Strength;
import org.firmset.trade.cure.StrengthGoal;
import org.jspecify.annotations.Nullable;

/** Writes a wait, a cure as the table of its days by the date of the finish. */
final class WaitWriter {
    private final Optional<Climate> climate;
    private final LocalDate statusDate;
    private final LocalDate lastFinish;
    private final Map<String, LocalDate> finished = new HashMap<>();
    private final Map<Cure, List<Integer>> tables = new HashMap<>();

    WaitWriter(Homestead homestead, Optional<Climate> climate, LocalDate statusDate, List<LocalDate> siteDates) {
        this.climate = climate;
        this.statusDate = statusDate;
        lastFinish = siteDates.isEmpty() ? statusDate : siteDates.getLast();
        for (Stage stage : homestead.stages()) {
            @Nullable Progress progress = stage.progress();
            if (progress != null && progress.finishedOn() != null) {
                finished.put(stage.key(), progress.finishedOn());
            }
        }
    }

    org.firmset.plan.Wait write(Wait wait) {
        return new org.firmset.plan.Wait(
                wait.key(),
                wait.name(),
                WaitKind.valueOf(wait.kind().name()),
                wait.from(),
                wait.to(),
                least(wait),
                wait.mostDays() == null ? org.firmset.plan.Wait.NO_LIMIT : wait.mostDays());
    }

    private LeastWait least(Wait wait) {
        Cure cure = wait.cure();
        if (cure == null || climate.isEmpty()) {
            return new LeastWait.Days(wait.leastDays());
        }
        @Nullable LocalDate finish = finished.get(wait.from());
        if (finish != null) {
            return new LeastWait.Days(Math.max(wait.leastDays(), days(cure, climate.get(), finish)));
        }
        List<Integer> days = tables.computeIfAbsent(cure, c -> table(c, climate.get())).stream()
                .map(d -> Math.max(d, wait.leastDays()))
                .toList();
        return new LeastWait.ByFinishDate(statusDate, days);
    }

    private List<Integer> table(Cure cure, Climate usual) {
        return CureTable.of(goal(cure), usual::meanOn, statusDate, lastFinish).days();
    }

    private static int days(Cure cure, Climate usual, LocalDate finish) {
        return Strength.calendarDaysTo(goal(cure), finish, usual::meanOn);
    }

    private static StrengthGoal goal(Cure cure) {
        return new StrengthGoal(cure.strengthPercent() / 100.0, cure.curve().orElseThrow(), cure.ageing());
    }
}
