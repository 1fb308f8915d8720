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
 * The outline of something seen from above. Written as "12 ft x 10 ft", "round 8 ft" (diameter), "ring 8 ft, 6 ft" (outer
 * and inner diameter) or "corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m" (going round, the last joins the first).
 */
public sealed interface PlanShape {
    /** In square metres. */
    double area();

    /** All edges in metres, inner ones too. */
    double edge();

    /** @param length and width in any order, both over 0 */
    record Rectangle(Length length, Length width) implements PlanShape {
        public Rectangle {
            requirePositive("length", length);
            requirePositive("width", width);
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

    /** @param diameter over 0 */
    record Round(Length diameter) implements PlanShape {
        public Round {
            requirePositive("diameter", diameter);
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

    /** @param inner diameter, over 0 and under the outer one */
    record Ring(Length outer, Length inner) implements PlanShape {
        public Ring {
            requirePositive("inner", inner);
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

    /** @param x to the right, y upwards */
    record Corner(Length x, Length y) {}

    /** @param corners three or more, going round; sides must not cross */
    record Corners(List<Corner> corners) implements PlanShape {
        public Corners {
            corners = List.copyOf(corners);
            if (corners.size() < 3 || Polygon.area(corners) <= 0) {
                throw new UnitsFault("'" + text(corners) + "' encloses nothing; write three or more corners, such as"
                        + " 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
            }
            if (Polygon.crosses(corners)) {
                throw new UnitsFault("'" + text(corners) + "' crosses itself; write the corners in the order in which"
                        + " you walk round them, such as 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
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
            return "corners "
                    + corners.stream().map(c -> c.x() + ", " + c.y()).collect(Collectors.joining("; "));
        }

        @Override
        public String toString() {
            return text(corners);
        }
    }

    /** @throws UnitsFault when the text is no shape */
    static PlanShape parse(String text) {
        String stripped = text.strip().toLowerCase(Locale.ROOT);
        if (stripped.length() > 2000) {
            throw fault(stripped);
        }
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
            throw fault(text);
        }
        return new Corners(corners);
    }

    private static List<Length> lengths(String text, String part, String between) {
        String[] two = part.split(between, -1);
        if (two.length != 2) {
            throw fault(text);
        }
        return List.of(length(two[0]), length(two[1]));
    }

    private static Length length(String text) {
        return (Length) Units.parse(Dimension.LENGTH, text.strip());
    }

    private static void requirePositive(String name, Length length) {
        if (length.value().signum() <= 0) {
            throw new UnitsFault("'" + length + "' is no " + name + " of a shape; write more than 0, such as '12 ft'");
        }
    }

    private static UnitsFault fault(String text) {
        String shown = text.length() > 60 ? text.substring(0, 60) + "..." : text;
        return new UnitsFault("'" + shown + "' is no shape; write it such as '12 ft x 10 ft', 'round 8 ft', 'ring 8 ft, 6 ft' or"
                + " 'corners 0 m, 0 m; 4 m, 0 m; 4 m, 3 m'");
    }
}
