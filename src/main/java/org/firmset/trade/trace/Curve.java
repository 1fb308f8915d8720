package org.firmset.trade.trace;

import java.util.List;

/**
 * A line to be drawn. Its table says the same in figures.
 *
 * @param across what runs from left to right, with its unit
 * @param up what runs upwards, with its unit
 * @param points from left to right
 * @param marks points with a meaning of their own, such as the share that is waited for
 */
public record Curve(String title, String across, String up, List<Point> points, List<Mark> marks) {
    public Curve {
        points = List.copyOf(points);
        marks = List.copyOf(marks);
    }

    public record Point(double x, double y) {}

    public record Mark(double x, double y, String label) {}
}
