package org.firmset.trade.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;

/**
 * The outline of something seen from above, no measure under 10 mm or over 300 m. Written as "12 ft x 10 ft", "round 8 ft" (diameter), "ring 8 ft, 6 ft" (outer
 * and inner diameter) or "corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m" (going round, the last joins the first).
 */
public sealed interface PlanShape {
    /** Longest text that is read and written. */
    int LONGEST_TEXT = 2000;

    /** In square metres. */
    double area();

    /** All edges in metres, inner ones too. */
    double edge();

    /** @param length and width in any order */
    record Rectangle(Length length, Length width) implements PlanShape {
        public Rectangle {
            requireMeasure("length", length);
            requireMeasure("width", width);
        }

        @Override
        public double area() {
            return length.amount() * width.amount();
        }

        @Override
        public double edge() {
            return 2 * (length.amount() + width.amount());
        }

        @Override
        public String toString() {
            return length + " x " + width;
        }
    }

    /** A disc. */
    record Round(Length diameter) implements PlanShape {
        public Round {
            requireMeasure("diameter", diameter);
        }

        @Override
        public double area() {
            return Math.PI / 4 * diameter.amount() * diameter.amount();
        }

        @Override
        public double edge() {
            return Math.PI * diameter.amount();
        }

        @Override
        public String toString() {
            return "round " + diameter;
        }
    }

    /** @param inner diameter, under the outer one */
    record Ring(Length outer, Length inner) implements PlanShape {
        public Ring {
            requireMeasure("inner diameter", inner);
            requireMeasure("outer diameter", outer);
            if (inner.value().compareTo(outer.value()) >= 0) {
                throw new UnitsFault("'ring " + outer + ", " + inner + "' has no width; write the outer diameter first,"
                        + " such as 'ring 8 ft, 6 ft'");
            }
        }

        @Override
        public double area() {
            return new Round(outer).area() - new Round(inner).area();
        }

        @Override
        public double edge() {
            return new Round(outer).edge() + new Round(inner).edge();
        }

        @Override
        public String toString() {
            return "ring " + outer + ", " + inner;
        }
    }

    /** @param x to the right, y upwards, both at most 300 m from where they are measured */
    record Corner(Length x, Length y) {
        public Corner {
            if (Math.abs(x.amount()) > 300 || Math.abs(y.amount()) > 300) {
                throw new UnitsFault("'" + x + ", " + y
                        + "' is no corner of a shape; write at most 300 m each way, such as" + " '4 m, 3 m'");
            }
        }
    }

    /** @param corners three or more, going round; sides must not cross */
    record Corners(List<Corner> corners) implements PlanShape {
        public Corners {
            corners = List.copyOf(corners);
            if (corners.size() < 3 || Polygon.area(corners) < 1e-4) {
                throw new UnitsFault(
                        "'" + shortened(text(corners)) + "' encloses nothing; write three or more corners, such as"
                                + " 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
            }
            if (Polygon.crosses(corners)) {
                throw new UnitsFault(
                        "'" + shortened(text(corners)) + "' crosses or touches itself; write each corner once, in"
                                + " the order in which you walk round them, such as 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
            }
        }

        @Override
        public double area() {
            return Polygon.area(corners);
        }

        @Override
        public double edge() {
            return Polygon.edge(corners);
        }

        private static String text(List<Corner> corners) {
            return "corners " + corners.stream().map(c -> c.x() + ", " + c.y()).collect(Collectors.joining("; "));
        }

        @Override
        public String toString() {
            return text(corners);
        }
    }

    /** @throws UnitsFault when the text is no shape */
    static PlanShape parse(String text) {
        String stripped = text.strip().toLowerCase(Locale.ROOT);
        if (stripped.length() > LONGEST_TEXT) {
            throw fault(stripped, "is too long");
        }
        PlanShape shape = shape(stripped);
        if (shape.toString().length() > LONGEST_TEXT) {
            throw fault(stripped, "is too long");
        }
        return shape;
    }

    private static PlanShape shape(String stripped) {
        if (stripped.startsWith("round ")) {
            return new Round(length(stripped.substring(6)));
        }
        if (stripped.startsWith("ring ")) {
            List<Length> two = lengths(stripped, stripped.substring(5), ",");
            return new Ring(two.getFirst(), two.getLast());
        }
        if (stripped.startsWith("corners ")) {
            return corners(stripped, stripped.substring(8));
        }
        List<Length> two = lengths(stripped, stripped, "[x×]");
        return new Rectangle(two.getFirst(), two.getLast());
    }

    private static PlanShape corners(String text, String list) {
        List<Corner> corners = new ArrayList<>();
        for (String part : list.split(";", -1)) {
            List<Length> two = lengths(text, part, ",");
            corners.add(new Corner(two.getFirst(), two.getLast()));
        }
        if (corners.size() > 100) {
            throw fault(text, "has more than 100 corners");
        }
        return new Corners(corners);
    }

    private static List<Length> lengths(String text, String part, String between) {
        String[] two = part.split(between, -1);
        if (two.length != 2) {
            throw fault(text, "is no shape");
        }
        return List.of(length(two[0]), length(two[1]));
    }

    private static Length length(String text) {
        return (Length) Units.parse(Dimension.LENGTH, text.strip());
    }

    private static void requireMeasure(String name, Length length) {
        if (length.amount() < 0.01 || length.amount() > 300) {
            throw new UnitsFault(
                    "'" + length + "' is no " + name + " of a shape; write from 10 mm to 300 m, such as '12 ft'");
        }
    }

    private static String shortened(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "..." : text;
    }

    private static UnitsFault fault(String text, String problem) {
        return new UnitsFault("'" + shortened(text) + "' " + problem
                + "; write it such as '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or"
                + " 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
    }
}
