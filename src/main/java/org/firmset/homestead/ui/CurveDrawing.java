package org.firmset.homestead.ui;

import java.util.Locale;
import org.firmset.trade.trace.Curve;

/** Draws a curve with its axes and marks. A table beside it says the same in figures. */
final class CurveDrawing {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 300;
    private static final int LEFT = 52;
    private static final int BOTTOM = 44;
    private static final int TOP = 14;
    private static final int RIGHT = 16;
    private static final int STEPS = 5;

    private final Curve curve;
    private final double most;
    private final double highest;
    private final StringBuilder svg = new StringBuilder();

    CurveDrawing(Curve curve) {
        this.curve = curve;
        most = round(curve.points().stream().mapToDouble(Curve.Point::x).max().orElse(1));
        highest =
                round(curve.points().stream().mapToDouble(Curve.Point::y).max().orElse(1));
    }

    /** Up to a number that divides well. */
    private static double round(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(value, 1e-9))));
        for (double step : new double[] {1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10}) {
            if (value <= step * power * (1 + 1e-9)) {
                return step * power;
            }
        }
        return value;
    }

    /** In a frame: only what stands inside the first element is parsed as a drawing. */
    String svg() {
        svg.append(
                "<div><svg class=\"fs-drawing fs-curve\" width=\"%1$d\" height=\"%2$d\" viewBox=\"0 0 %1$d %2$d\" role=\"img\" aria-label=\"%3$s\">"
                        .formatted(
                                WIDTH, HEIGHT, escaped(curve.title() + ": " + curve.up() + " over " + curve.across())));
        grid();
        StringBuilder path = new StringBuilder();
        for (Curve.Point point : curve.points()) {
            path.append(String.format(
                    Locale.ROOT, "%s%.1f %.1f", path.isEmpty() ? "M" : " L", across(point.x()), up(point.y())));
        }
        svg.append("<path class=\"fs-line\" d=\"").append(path).append("\"/>");
        curve.marks().forEach(this::mark);
        return svg.append("</svg></div>").toString();
    }

    private double across(double x) {
        return LEFT + x / most * (WIDTH - LEFT - RIGHT);
    }

    private double up(double y) {
        return HEIGHT - BOTTOM - y / highest * (HEIGHT - BOTTOM - TOP);
    }

    private void grid() {
        for (int i = 0; i <= STEPS; i++) {
            double x = most * i / STEPS;
            double y = highest * i / STEPS;
            line(across(x), up(0), across(x), up(highest));
            line(across(0), up(y), across(most), up(y));
            text(across(x), HEIGHT - BOTTOM + 17, "middle", number(x));
            text(LEFT - 7, up(y) + 4, "end", number(y));
        }
        text((LEFT + WIDTH) / 2.0, HEIGHT - 8, "middle", curve.across());
        text(LEFT + 6, TOP + 10, "start", curve.up());
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private void mark(Curve.Mark mark) {
        double x = across(Math.min(mark.x(), most));
        double y = up(Math.min(mark.y(), highest));
        svg.append(String.format(Locale.ROOT, "<path class=\"fs-mark\" d=\"M%.1f %.1f L%.1f %.1f\"/>", x, up(0), x, y));
        svg.append(String.format(Locale.ROOT, "<circle class=\"fs-mark\" cx=\"%.1f\" cy=\"%.1f\" r=\"4\"/>", x, y));
        boolean right = x > WIDTH * 0.6;
        text(x + (right ? -8 : 8), y + 18, right ? "end" : "start", mark.label());
    }

    private void line(double x1, double y1, double x2, double y2) {
        svg.append(String.format(Locale.ROOT, "<path class=\"fs-grid\" d=\"M%.1f %.1f L%.1f %.1f\"/>", x1, y1, x2, y2));
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, escaped(words)));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
