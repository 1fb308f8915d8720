package org.firmset.season.ui;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import org.firmset.season.day.DayOutlook;
import org.firmset.season.day.DayOutlook.DayPower;
import org.firmset.season.day.DayOutlook.Placed;
import org.firmset.trade.climate.Light;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.SunCurve;

/**
 * Draws a day from midnight to midnight: the charge of the battery as a line over its limit, what the panels give as a filled strip
 * under it, and the work in its time. A table beside it says the same in figures.
 */
final class ChargeDrawing {
    private static final int WIDTH = 736;
    private static final int LEFT = 58;
    private static final int RIGHT = 12;
    private static final int TOP = 22;
    private static final int CHARGE = 190;
    private static final int SUN_TOP = TOP + CHARGE + 34;
    private static final int SUN = 56;
    private static final int WORK_TOP = SUN_TOP + SUN + 30;
    private static final int WORK = 26;
    private static final int BOTTOM = WORK_TOP + WORK + 24;
    private static final int EVERY_HOURS = 3;

    private final DayOutlook day;
    private final DayPower power;
    private final double capacity;
    private final double mostSun;
    private final StringBuilder svg = new StringBuilder();

    ChargeDrawing(DayOutlook day, DayPower power) {
        this.day = day;
        this.power = power;
        capacity = Math.max(1, power.system().battery().capacityWattHours());
        double most = 0;
        SunCurve sun = power.day().sun();
        for (int i = 0; i < sun.steps(); i++) {
            most = Math.max(most, sun.wattsPerWatt(i));
        }
        mostSun = most * power.system().panelWatts();
    }

    String svg() {
        hours();
        light();
        sun();
        limit();
        charge();
        day.work().forEach(this::work);
        if (day.work().isEmpty()) {
            text(LEFT + 5, WORK_TOP + 17, "start", "no work planned");
        }
        return Svg.framed("fs-day-curve", WIDTH, BOTTOM, label(), svg);
    }

    private static double x(double minute) {
        return LEFT + minute / (24 * 60) * (WIDTH - LEFT - RIGHT);
    }

    private double y(double wattHours) {
        return TOP + CHARGE * (1 - wattHours / capacity);
    }

    private static double minute(LocalTime time) {
        return time.toSecondOfDay() / 60.0;
    }

    private void hours() {
        for (int hour = 0; hour <= 24; hour += EVERY_HOURS) {
            double x = x(hour * 60.0);
            path("fs-grid", Svg.format("M%.1f %d V%d", x, TOP, WORK_TOP + WORK));
            text(x, BOTTOM - 6, hour == 0 ? "start" : hour == 24 ? "end" : "middle", "%02d:00".formatted(hour));
        }
        for (int quarter = 0; quarter <= 4; quarter++) {
            double y = y(capacity * quarter / 4);
            path("fs-grid", Svg.format("M%d %.1f H%d", LEFT, y, WIDTH - RIGHT));
            text(LEFT - 6, y + 4, "end", quarter * 25 + " %");
        }
        path("fs-grid", Svg.format("M%d %d H%d", LEFT, SUN_TOP + SUN, WIDTH - RIGHT));
        text(LEFT, TOP - 8, "start", "Battery, %,d Wh when full".formatted(Math.round(capacity)));
        text(LEFT, SUN_TOP - 6, "start", "Sun on the panels, at most %,d W".formatted(Math.round(mostSun)));
        text(LEFT, WORK_TOP - 8, "start", "Work");
    }

    /** First and last light. */
    private void light() {
        if (day.civil() instanceof Light.Hours hours) {
            mark(hours.from().toLocalDateTime(), "first light");
            mark(hours.to().toLocalDateTime(), "last light");
        }
    }

    private void mark(LocalDateTime at, String words) {
        if (at.toLocalDate().equals(day.date())) {
            double x = x(minute(at.toLocalTime()));
            path("fs-light", Svg.format("M%.1f %d V%d", x, TOP, WORK_TOP + WORK));
            text(x + 4, TOP + CHARGE - 6, "start", words);
        }
    }

    private void sun() {
        SunCurve sun = power.day().sun();
        StringBuilder outline = new StringBuilder(Svg.format("M%.1f %d", x(0), SUN_TOP + SUN));
        for (int i = 0; i < sun.steps(); i++) {
            double watts = sun.wattsPerWatt(i) * power.system().panelWatts();
            double height = mostSun == 0 ? 0 : watts / mostSun * SUN;
            outline.append(Svg.format(" L%.1f %.1f", x((i + 0.5) * sun.stepMinutes()), SUN_TOP + SUN - height));
        }
        path(
                "fs-sun",
                outline.append(Svg.format(" L%.1f %d Z", x(24 * 60), SUN_TOP + SUN))
                        .toString());
    }

    private void limit() {
        double limit = power.curve().points().getLast().limitWattHours();
        path("fs-limit", Svg.format("M%d %.1f H%d", LEFT, y(limit), WIDTH - RIGHT));
        text(WIDTH - RIGHT - 4, y(limit) - 5, "end", "not under %,d Wh".formatted(Math.round(limit)));
    }

    private void charge() {
        StringBuilder line = new StringBuilder();
        for (ChargeCurve.Point point : power.curve().points()) {
            line.append(Svg.format(
                    "%s%.1f %.1f", line.isEmpty() ? "M" : " L", x(minutes(point.at())), y(point.wattHours())));
        }
        path("fs-line", line.toString());
        ChargeCurve.Point lowest = power.curve().lowest();
        svg.append(Svg.format(
                "<circle class=\"fs-ball\" cx=\"%.1f\" cy=\"%.1f\" r=\"4\"/>",
                x(minutes(lowest.at())), y(lowest.wattHours())));
    }

    private double minutes(LocalDateTime at) {
        return Duration.between(day.date().atStartOfDay(), at).toSeconds() / 60.0;
    }

    private void work(Placed work) {
        double from = x(minute(work.from()));
        double width = Math.max(2, x(minute(work.from()) + work.clock().toMinutes()) - from - 1);
        svg.append(Svg.format(
                "<g><title>%s</title><rect class=\"fs-piece\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" rx=\"2\"/>"
                        + "<text x=\"%.1f\" y=\"%d\">%s</text></g>",
                Svg.escaped(work.name() + ", " + work.labour()),
                from,
                WORK_TOP,
                width,
                WORK,
                from + 5,
                WORK_TOP + 17,
                Svg.escaped(Svg.cut(work.name(), width - 8))));
    }

    private void path(String look, String way) {
        svg.append("<path class=\"").append(look).append("\" d=\"").append(way).append("\"/>");
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(Svg.format(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, Svg.escaped(words)));
    }

    private String label() {
        ChargeCurve.Point lowest = power.curve().lowest();
        Optional<LocalDateTime> broken = power.curve().broken();
        return "Charge of the battery from midnight to midnight: least above its limit at %s with %,d Wh left%s"
                .formatted(
                        lowest.at().toLocalTime(),
                        Math.round(lowest.leftWattHours()),
                        broken.isPresent()
                                ? "; under its limit from " + broken.get().toLocalTime()
                                : "");
    }
}
