package org.firmset.trade.power;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A table read between its rows along straight lines, and beyond its ends as at the ends.
 *
 * @param points at least one, each further right than the one before
 */
record BrokenLine(List<Point> points) {
    BrokenLine {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("points [] of a table must be one or more");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).x() <= points.get(i - 1).x()) {
                throw new IllegalArgumentException("points " + points + " of a table must rise in x");
            }
        }
    }

    record Point(double x, double y) {}

    /** Pairs of x and y. */
    static BrokenLine of(double... pairs) {
        return new BrokenLine(IntStream.range(0, pairs.length / 2)
                .mapToObj(i -> new Point(pairs[2 * i], pairs[2 * i + 1]))
                .toList());
    }

    double at(double x) {
        Point before = points.getFirst();
        for (Point point : points) {
            if (x <= point.x()) {
                double width = point.x() - before.x();
                return width == 0
                        ? point.y()
                        : before.y() + (point.y() - before.y()) * Math.max(0, x - before.x()) / width;
            }
            before = point;
        }
        return before.y();
    }
}
