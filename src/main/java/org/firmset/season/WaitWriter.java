package org.firmset.season;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firmset.homestead.Cure;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Wait;
import org.firmset.plan.LeastWait;
import org.firmset.plan.WaitKind;
import org.firmset.trade.cure.Cement;
import org.firmset.trade.cure.Strength;

/** Writes a wait, a cure as the table of its days by the date of the finish. */
final class WaitWriter {
    private final Optional<Climate> climate;
    private final LocalDate firstFinish;
    private final LocalDate lastFinish;
    private final Map<Cure, List<Integer>> tables = new HashMap<>();

    WaitWriter(Homestead homestead, Optional<Climate> climate, LocalDate statusDate, List<LocalDate> siteDates) {
        this.climate = climate;
        firstFinish = homestead.stages().stream()
                .map(Stage::progress)
                .filter(java.util.Objects::nonNull)
                .map(p -> p.finishedOn() == null ? statusDate : p.finishedOn())
                .min(LocalDate::compareTo)
                .filter(d -> d.isBefore(statusDate))
                .orElse(statusDate);
        lastFinish = siteDates.isEmpty() ? statusDate : siteDates.getLast();
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
        List<Integer> days = tables.computeIfAbsent(cure, c -> table(c, climate.get())).stream()
                .map(d -> Math.max(d, wait.leastDays()))
                .toList();
        return new LeastWait.ByFinishDate(firstFinish, days);
    }

    private List<Integer> table(Cure cure, Climate usual) {
        Cement cement = Cement.valueOf(cure.cement().name());
        int length = Math.toIntExact(lastFinish.toEpochDay() - firstFinish.toEpochDay() + 1);
        return IntStream.range(0, Math.max(1, length))
                .mapToObj(i -> Strength.calendarDaysTo(
                        cure.strengthPercent() / 100.0, cement, firstFinish.plusDays(i), usual::meanOn))
                .toList();
    }
}
