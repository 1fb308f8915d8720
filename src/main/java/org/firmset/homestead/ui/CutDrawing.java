package org.firmset.homestead.ui;

import java.util.List;
import java.util.Locale;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.CutBar;
import org.firmset.trade.trace.Show;

/** Draws how stock is cut, to scale: pieces outlined, left-overs hatched. The list beside it says the same in words. */
final class CutDrawing {
    private static final int WIDTH = 640;
    private static final int NUMBER = 44;
    private static final int ROW = 34;
    private static final int BAR = 24;

    private final List<CutBar> cuts;
    private final UnitSystem units;
    private final StringBuilder svg = new StringBuilder();

    CutDrawing(List<CutBar> cuts, UnitSystem units) {
        this.cuts = cuts;
        this.units = units;
    }

    /** In a frame: only what stands inside the first element is parsed as a drawing. */
    String svg() {
        double longest = cuts.stream().mapToDouble(CutBar::stock).max().orElse(1);
        double scale = (WIDTH - NUMBER - 2) / longest;
        svg.append(
                "<div><svg class=\"fs-drawing fs-cuts\" width=\"%1$d\" height=\"%2$d\" viewBox=\"0 0 %1$d %2$d\" role=\"img\" aria-label=\"Bars cut to scale\">"
                        .formatted(WIDTH, cuts.size() * ROW + 2));
        svg.append("<defs><pattern id=\"fs-left\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                + "<path d=\"M0 6 L6 0\" class=\"fs-hatch\"/></pattern></defs>");
        for (int row = 0; row < cuts.size(); row++) {
            bar(cuts.get(row), row * ROW + 4, scale);
        }
        return svg.append("</svg></div>").toString();
    }

    private void bar(CutBar bar, int top, double scale) {
        svg.append("<text x=\"0\" y=\"%d\">%d ×</text>".formatted(top + 17, bar.times()));
        double x = NUMBER;
        for (double piece : bar.pieces()) {
            double wide = piece * scale;
            box(x, top, wide, "fs-piece");
            String words = Show.amount(Amount.length(piece), units);
            if (wide > words.length() * 6.6) {
                svg.append(String.format(
                        Locale.ROOT,
                        "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>",
                        x + wide / 2,
                        top + 17,
                        words));
            }
            x += wide;
        }
        double end = NUMBER + bar.stock() * scale;
        if (end - x > 0.5) {
            box(x, top, end - x, "fs-left");
        }
    }

    private void box(double x, int top, double wide, String look) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" class=\"%s\"/>",
                x,
                top,
                wide,
                BAR,
                look));
    }
}
