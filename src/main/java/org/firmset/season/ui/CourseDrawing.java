package org.firmset.season.ui;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.firmset.measure.Cash;
import org.firmset.season.money.Course;
import org.javamoney.moneta.Money;

/** Draws how the money goes over time: steps, as money is paid on days. A table beside it says the same in figures. */
final class CourseDrawing {
    private static final int WIDTH = 820;
    private static final int HEIGHT = 340;
    private static final int LEFT = 66;
    private static final int RIGHT = 18;
    private static final int TOP = 30;
    private static final int BOTTOM = 40;
    private static final int STEPS = 5;
    private static final double[] ROUND = {1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10};

    private final Course course;
    private final LocalDate today;
    private final LocalDate first;
    private final long days;
    private final double highest;
    private final String currency;
    private final StringBuilder svg = new StringBuilder();

    /** @param course with at least one point in all */
    CourseDrawing(Course course, LocalDate today, String currency) {
        this.course = course;
        this.today = today;
        this.currency = currency;
        List<Course.Point> all = Stream.of(course.planned(), course.real(), course.ahead())
                .flatMap(List::stream)
                .toList();
        first = YearMonth.from(all.stream()
                        .map(Course.Point::on)
                        .min(LocalDate::compareTo)
                        .orElse(today))
                .atDay(1);
        LocalDate last =
                all.stream().map(Course.Point::on).max(LocalDate::compareTo).orElse(today);
        days = Math.max(1, ChronoUnit.DAYS.between(first, YearMonth.from(last).atEndOfMonth()) + 1);
        highest = round(all.stream().mapToDouble(p -> cents(p.sum())).max().orElse(1));
    }

    private static double cents(Money money) {
        return Cash.cents(money);
    }

    /** Up to a number that divides well. */
    private static double round(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(value, 1))));
        for (double step : ROUND) {
            if (value <= step * power) {
                return step * power;
            }
        }
        return value;
    }

    String svg() {
        grid();
        line("fs-course-plan", course.planned(), false);
        line("fs-course-ahead", course.ahead(), true);
        line("fs-course-real", course.real(), false);
        double x = across(today);
        svg.append(Svg.format("<path class=\"fs-mark\" d=\"M%.1f %d L%.1f %d\"/>", x, TOP - 8, x, HEIGHT - BOTTOM));
        text(x + 5, TOP - 12, "start", "today");
        return Svg.framed(
                "fs-course",
                WIDTH,
                HEIGHT,
                "The money added up over time: as budgeted, really spent, and to be paid by the plan; the table below says it"
                        + " in figures",
                svg);
    }

    private double across(LocalDate day) {
        return LEFT + (double) ChronoUnit.DAYS.between(first, day) / days * (WIDTH - LEFT - RIGHT);
    }

    private double up(double cents) {
        return HEIGHT - BOTTOM - cents / highest * (HEIGHT - BOTTOM - TOP);
    }

    private void grid() {
        for (int i = 0; i <= STEPS; i++) {
            double y = up(highest * i / STEPS);
            svg.append(Svg.format("<path class=\"fs-grid\" d=\"M%d %.1f L%d %.1f\"/>", LEFT, y, WIDTH - RIGHT, y));
            text(LEFT - 7, y + 4, "end", amount(highest * i / STEPS));
        }
        LocalDate end = first.plusDays(days);
        for (LocalDate month = first; month.isBefore(end); month = month.plusMonths(1)) {
            double x = across(month);
            svg.append(Svg.format(
                    "<path class=\"fs-grid\" d=\"M%.1f %d L%.1f %d\"/>", x, HEIGHT - BOTTOM, x, HEIGHT - BOTTOM + 6));
            if (days < 800 || month.getMonthValue() % 3 == 1) {
                text(
                        x + 3,
                        HEIGHT - BOTTOM + 16,
                        "start",
                        month.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
            }
            if (month.equals(first) || month.getMonthValue() == 1) {
                text(x + 3, HEIGHT - BOTTOM + 31, "start", Integer.toString(month.getYear()));
            }
        }
    }

    private String amount(double cents) {
        String shown = Cash.show(Math.round(cents / 100) * 100, currency);
        return shown.replace(".00", "");
    }

    private void line(String look, List<Course.Point> points, boolean dots) {
        if (points.isEmpty()) {
            return;
        }
        StringBuilder path = new StringBuilder();
        double before = up(dots ? cents(points.getFirst().sum()) : 0);
        for (Course.Point point : points) {
            double x = across(point.on());
            double y = up(cents(point.sum()));
            path.append(
                    Svg.format(path.isEmpty() ? "M%.1f %.1f L%.1f %.1f" : " L%.1f %.1f L%.1f %.1f", x, before, x, y));
            before = y;
        }
        svg.append("<path class=\"").append(look).append("\" d=\"").append(path).append("\"/>");
        if (dots) {
            points.stream()
                    .skip(1)
                    .forEach(p -> svg.append(Svg.format(
                            "<circle class=\"fs-course-dot\" cx=\"%.1f\" cy=\"%.1f\" r=\"3.2\"/>",
                            across(p.on()), up(cents(p.sum())))));
        }
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(Svg.format(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, Svg.escaped(words)));
    }
}
