package org.firmset.season.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.firmset.spend.Baseline;
import org.javamoney.moneta.Money;

/**
 * How the money goes over time, added up: as a kept budget had it, as receipts tell it, and as the plan has it from here on.
 * Steps: the sum holds from its day to the next.
 *
 * @param planned empty when no budget was kept
 * @param real ends today
 * @param ahead begins today with what is spent; ends with what is expected at the finish
 */
public record Course(List<Point> planned, List<Point> real, List<Point> ahead) {
    /** @param sum of all up to this day */
    public record Point(LocalDate on, Money sum) {}

    public static Course of(MoneyReport report) {
        return of(report, List.of());
    }

    /** With the course of a budget that was kept; what it has no date for counts from the day it was kept. */
    public static Course of(MoneyReport report, Baseline kept) {
        Map<LocalDate, Money> days = new TreeMap<>();
        kept.items().forEach(i -> days.merge(i.due() == null ? kept.on() : i.due(), i.amount(), Money::add));
        return of(report, summed(report.budget().sum(i -> false), days));
    }

    private static Course of(MoneyReport report, List<Point> planned) {
        Money none = report.budget().sum(i -> false);
        List<Point> real = new ArrayList<>(summed(none, report.paid()));
        Money spent = real.isEmpty() ? none : real.getLast().sum();
        if (real.isEmpty() || real.getLast().on().isBefore(report.today())) {
            real.add(new Point(report.today(), spent));
        }
        Map<LocalDate, Money> days = new TreeMap<>();
        report.payments().forEach(p -> days.merge(p.on(), p.amount(), Money::add));
        List<Point> ahead = new ArrayList<>();
        ahead.add(new Point(report.today(), spent));
        ahead.addAll(summed(spent, days));
        return new Course(planned, List.copyOf(real), List.copyOf(ahead));
    }

    private static List<Point> summed(Money from, Map<LocalDate, Money> days) {
        List<Point> points = new ArrayList<>();
        Money sum = from;
        for (Map.Entry<LocalDate, Money> day : days.entrySet()) {
            sum = sum.add(day.getValue());
            points.add(new Point(day.getKey(), sum));
        }
        return points;
    }

    /** The sum of a line on a day; empty list or a day before its first: nothing. */
    public static Money on(List<Point> line, LocalDate day, Money none) {
        Money sum = none;
        for (Point point : line) {
            if (!point.on().isAfter(day)) {
                sum = point.sum();
            }
        }
        return sum;
    }
}
