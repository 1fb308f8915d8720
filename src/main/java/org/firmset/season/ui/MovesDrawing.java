package org.firmset.season.ui;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.firmset.season.ask.SideBySide;
import org.firmset.season.ask.SideBySideWords;
import org.firmset.season.result.SeasonReport;
import org.jspecify.annotations.Nullable;

/**
 * Draws where stages lay and where they lie: for each subproject a line of time with a tick for each trip that works on it,
 * the numbers of moved stages above it, outlined, as the first plan has them, and below it, filled, as the second has them.
 * The table of the stages that moved says the same in words, under the same numbers.
 */
final class MovesDrawing {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final int WIDTH = 720;
    private static final int EDGE = 4;
    private static final int TOP = 20;
    private static final int NAME = 18;
    private static final int ROW = 22;
    private static final int BOX = 18;
    private static final int LEAST_WIDTH = 22;
    private static final int GAP = 8;
    private static final int MONTH_WIDTH = 30;

    private final SideBySide plans;
    private final LocalDate from;
    private final double perDay;
    private final StringBuilder svg = new StringBuilder();

    /** A stage in one of the plans, as a box that lies in a row of others. */
    private record Box(int number, String words, double left, double width, int row) {}

    MovesDrawing(SideBySide plans) {
        this.plans = plans;
        List<LocalDate> dates = dates(plans);
        from = dates.stream().min(LocalDate::compareTo).orElseThrow();
        LocalDate to = dates.stream().max(LocalDate::compareTo).orElseThrow();
        perDay = (WIDTH - 2.0 * EDGE) / (ChronoUnit.DAYS.between(from, to) + 1);
    }

    private static List<LocalDate> dates(SideBySide plans) {
        Stream<LocalDate> stages = plans.moved().stream()
                .flatMap(m -> Stream.of(Optional.ofNullable(m.first()), Optional.ofNullable(m.second())))
                .flatMap(Optional::stream)
                .flatMap(s -> Stream.of(s.start(), s.finish()));
        Stream<LocalDate> trips = Stream.of(plans.first(), plans.second())
                .flatMap(p -> p.report().madeTrips().stream())
                .flatMap(t -> Stream.of(t.firstDate(), t.lastDate()));
        return Stream.concat(stages, trips).toList();
    }

    String svg() {
        int y = TOP;
        for (SideBySide.Finish lane : plans.finishes()) {
            y = lane(lane, y);
        }
        String label = "Where the stages of the table above lie in both plans";
        return Svg.framed("fs-moves", WIDTH, y, label, months(y) + svg);
    }

    private String months(int height) {
        StringBuilder grid = new StringBuilder();
        LocalDate last = from.plusDays(Math.round((WIDTH - 2 * EDGE) / perDay));
        for (LocalDate month = from.withDayOfMonth(1).plusMonths(1);
                month.isBefore(last);
                month = month.plusMonths(1)) {
            grid.append(String.format(
                    Locale.ROOT,
                    "<path class=\"fs-grid\" d=\"M%1$.1f 0 V%2$d\"/><text x=\"%3$.1f\" y=\"12\">%4$s</text>",
                    x(month),
                    height,
                    x(month) + 3,
                    x(month) + MONTH_WIDTH > WIDTH ? "" : MONTH.format(month)));
        }
        return grid.toString();
    }

    /** @return where the next lane begins */
    private int lane(SideBySide.Finish lane, int top) {
        List<Box> above =
                boxes(lane.key(), SideBySide.Moved::first, plans.first().name());
        List<Box> below =
                boxes(lane.key(), SideBySide.Moved::second, plans.second().name());
        if (above.isEmpty() && below.isEmpty()) {
            return top;
        }
        svg.append("<text class=\"fs-lane-name\" x=\"%d\" y=\"%d\">%s</text>"
                .formatted(EDGE, top + 13, Svg.escaped(lane.name())));
        int line = top + NAME + rows(above) * ROW + GAP;
        svg.append("<path class=\"fs-lane\" d=\"M%d %d H%d\"/>".formatted(EDGE, line, WIDTH - EDGE));
        ticks(plans.first().report(), lane.key(), line, -GAP + 1);
        ticks(plans.second().report(), lane.key(), line, GAP - 1);
        above.forEach(b -> draw(b, line - GAP - b.row() * ROW - BOX, "fs-was"));
        below.forEach(b -> draw(b, line + GAP + b.row() * ROW, "fs-is"));
        return line + GAP + rows(below) * ROW + 2 * GAP;
    }

    private static int rows(List<Box> boxes) {
        return boxes.stream().mapToInt(b -> b.row() + 1).max().orElse(0);
    }

    private void ticks(SeasonReport report, String subproject, int line, int length) {
        for (SeasonReport.TripPart trip : SideBySide.tripsFor(report, subproject)) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path class=\"fs-tick\" d=\"M%.1f %d V%d\"/>",
                    x(trip.firstDate()),
                    line,
                    line + length));
        }
    }

    /** Each in the row nearest to the line in which it covers no other. */
    private List<Box> boxes(
            String subproject, Function<SideBySide.Moved, SideBySide.@Nullable Span> which, String plan) {
        List<Box> boxes = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        for (int i = 0; i < plans.moved().size(); i++) {
            SideBySide.Moved stage = plans.moved().get(i);
            SideBySide.Span span = which.apply(stage);
            if (span == null || !stage.subproject().equals(subproject)) {
                continue;
            }
            double width = Math.max(LEAST_WIDTH, x(span.finish().plusDays(1)) - x(span.start()));
            double left = Math.min(x(span.start()), WIDTH - EDGE - width);
            int row = 0;
            while (row < ends.size() && ends.get(row) > left) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, left + width + 2);
            boxes.add(new Box(i + 1, "%s, %s".formatted(plan, SideBySideWords.stage(stage, span)), left, width, row));
        }
        return boxes;
    }

    private void draw(Box box, int top, String look) {
        svg.append(String.format(
                Locale.ROOT,
                "<g class=\"%s\"><title>%s</title><rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" rx=\"2\"/>"
                        + "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%d</text></g>",
                look,
                Svg.escaped(box.words()),
                box.left(),
                top,
                box.width(),
                BOX,
                box.left() + box.width() / 2,
                top + 13,
                box.number()));
    }

    private double x(LocalDate date) {
        return EDGE + ChronoUnit.DAYS.between(from, date) * perDay;
    }
}
