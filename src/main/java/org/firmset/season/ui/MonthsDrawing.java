package org.firmset.season.ui;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.firmset.season.day.MonthOutlook;

/** Draws twelve months as four strips of bars with their figures: dry days, frost, light, sun. A table says the same. */
final class MonthsDrawing {
    private static final int WIDTH = 736;
    private static final int LEFT = 128;
    private static final int STRIP = 64;
    private static final int BAR = 34;
    private static final int TOP = 6;
    private static final int FOOT = 20;
    private static final double DAY_HOURS = 24;

    private final List<MonthOutlook> months;
    private final double step;
    private final StringBuilder svg = new StringBuilder();

    MonthsDrawing(List<MonthOutlook> months) {
        this.months = months;
        step = (WIDTH - LEFT) / (double) Math.max(1, months.size());
    }

    String svg() {
        double mostSun = Math.max(
                1, months.stream().mapToDouble(MonthOutlook::sunHours).max().orElse(1));
        strip(0, "Dry day, %", m -> m.dryOdds(), 100);
        strip(1, "Night of frost, %", m -> m.frostOdds(), 100);
        strip(2, "Light, hours", m -> m.daylight().toMinutes() / 60.0 / DAY_HOURS, DAY_HOURS);
        strip(3, "Full sun, hours", m -> m.sunHours() / mostSun, mostSun);
        int bottom = TOP + 4 * STRIP;
        for (int i = 0; i < months.size(); i++) {
            text(LEFT + (i + 0.5) * step, bottom + 14, "middle", months.get(i).shortName());
        }
        return Svg.framed(
                "fs-months",
                WIDTH,
                bottom + FOOT,
                "Dry days, nights of frost, light and sun of the twelve months; the table below has the figures",
                svg);
    }

    /** @param share of the strip's height, 0 to 1 @param whole what a full bar stands for */
    private void strip(int row, String name, ToDoubleFunction<MonthOutlook> share, double whole) {
        int foot = TOP + (row + 1) * STRIP - 8;
        text(0, foot - 4, "start", name);
        svg.append(Svg.format("<path class=\"fs-grid\" d=\"M%d %d H%d\"/>", LEFT, foot, WIDTH));
        for (int i = 0; i < months.size(); i++) {
            double part = share.applyAsDouble(months.get(i));
            double height = part * BAR;
            double left = LEFT + i * step + step * 0.2;
            svg.append(Svg.format(
                    "<rect class=\"fs-used\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>",
                    left, foot - height, step * 0.6, height));
            text(
                    LEFT + (i + 0.5) * step,
                    foot - height - 4,
                    "middle",
                    Svg.format(whole == 100 ? "%.0f" : "%.1f", part * whole));
        }
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(Svg.format(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, Svg.escaped(words)));
    }
}
