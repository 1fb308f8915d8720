package org.firmset.trade.cure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Table;

/** A pour's strength day by day, and what other dates and other methods would make of its wait. */
final class CuringTables {
    private static final List<Integer> STEPS =
            List.of(1, 2, 3, 4, 5, 6, 7, 10, 14, 21, 28, 42, 56, 90, 180, 365, 730, 1825);
    private static final Amount NEVER = Amount.word("not in ten years");
    private static final int MOST_POINTS = 120;
    private static final int MONTHS = 12;

    private CuringTables() {}

    static Table growth(CuringCase pour) {
        TreeSet<Integer> days = new TreeSet<>(STEPS.subList(0, STEPS.indexOf(CuringCase.STANDARD_DAYS) + 1));
        days.addAll(STEPS.stream().filter(d -> d < pour.waitDays()).toList());
        days.add(pour.waitDays());
        return new Table(
                "Strength day by day",
                List.of(
                        "days after the pour",
                        "date",
                        "mean of the day",
                        "age counted",
                        "share of the 28-day strength"),
                days.stream().map(day -> grown(pour, day)).toList());
    }

    private static List<Amount> grown(CuringCase pour, int day) {
        return List.of(
                Amount.count(day, ""),
                Amount.on(pour.given().poured().plusDays(day)),
                Amount.temperature(pour.ages().celsiusOn(day)),
                Amount.days(pour.ages().after(day)),
                Amount.percent(pour.shareAfter(day)));
    }

    static Curve curve(CuringCase pour) {
        int last = pour.ages().days();
        int step = (last + MOST_POINTS - 1) / MOST_POINTS;
        List<Curve.Point> points = IntStream.iterate(0, day -> day < last, day -> day + step)
                .mapToObj(day -> point(pour, day))
                .toList();
        return new Curve(
                "Strength after the pour",
                "days after " + pour.given().poured(),
                "% of the 28-day strength",
                Stream.concat(points.stream(), Stream.of(point(pour, last))).toList(),
                List.of(
                        mark(pour, pour.strengthDays(), "awaited share"),
                        mark(pour, CuringCase.STANDARD_DAYS, "28 days")));
    }

    private static Curve.Point point(CuringCase pour, int day) {
        return new Curve.Point(day, pour.shareAfter(day) * 100);
    }

    private static Curve.Mark mark(CuringCase pour, int day, String label) {
        return new Curve.Mark(day, pour.shareAfter(day) * 100, label);
    }

    /** The wait of pours on the first of this month and of the eleven after it. */
    static Table months(CuringCase pour) {
        LocalDate first = pour.given().poured().withDayOfMonth(1);
        CureTable table = CureTable.of(pour.goal(), pour.temperature(), first, first.plusMonths(MONTHS - 1));
        return new Table(
                "The same wait after pours on other dates",
                List.of("poured on", "days to wait", "ready on", "frost while it is young"),
                IntStream.range(0, MONTHS)
                        .mapToObj(first::plusMonths)
                        .map(date -> month(pour, date, Math.max(table.daysAfter(date), pour.leastDays())))
                        .toList());
    }

    private static List<Amount> month(CuringCase pour, LocalDate date, int days) {
        Amount ready = days < Strength.LONGEST_DAYS ? Amount.on(date.plusDays(days)) : NEVER;
        String frost = pour.frostAfter(date) ? "usual: only if kept warm" : "not usual";
        return List.of(Amount.on(date), waited(days), ready, Amount.word(frost));
    }

    private static Amount waited(int days) {
        return days < Strength.LONGEST_DAYS ? Words.counted(days) : NEVER;
    }

    /** The days until the strength is there by all published methods for this cement. */
    static Table methods(CuringCase pour) {
        List<List<Amount>> rows = new ArrayList<>();
        for (StrengthMethod method : StrengthMethod.values()) {
            StrengthCurve.of(method, pour.given().cement())
                    .ifPresent(curve -> Arrays.stream(Ageing.values())
                            .forEach(ageing -> rows.add(List.of(
                                    Amount.word(method.words()),
                                    Amount.word(ageing.words()),
                                    waited(daysBy(pour, curve, ageing))))));
        }
        return new Table(
                "Days until the strength is there by other published methods",
                List.of("curve", "how a day counts", "days"),
                rows);
    }

    static int daysBy(CuringCase pour, StrengthCurve curve, Ageing ageing) {
        StrengthGoal goal = new StrengthGoal(pour.goal().share(), curve, ageing);
        return Strength.calendarDaysTo(goal, pour.given().poured(), pour.temperature());
    }
}
