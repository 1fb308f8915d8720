package org.firmset.trade.takeoff;

import java.util.List;

/** Area, edge and soundness of a shape by its corners. */
final class Polygon {
    private Polygon() {}

    /** By the sum of the trapezoids under its sides, whichever way round the corners go. */
    static double area(List<PlanShape.Corner> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            PlanShape.Corner here = corners.get(i);
            PlanShape.Corner next = corners.get((i + 1) % corners.size());
            sum += x(here) * y(next) - x(next) * y(here);
        }
        return Math.abs(sum) / 2;
    }

    static double edge(List<PlanShape.Corner> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            PlanShape.Corner here = corners.get(i);
            PlanShape.Corner next = corners.get((i + 1) % corners.size());
            sum += Math.hypot(x(next) - x(here), y(next) - y(here));
        }
        return sum;
    }

    /** Whether two sides that are not neighbours meet; sides in one line with a gap between them do not. */
    static boolean crosses(List<PlanShape.Corner> corners) {
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < n; j++) {
                boolean neighbours = i == 0 && j == n - 1;
                if (!neighbours && meet(corners, i, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean meet(List<PlanShape.Corner> corners, int i, int j) {
        PlanShape.Corner a = corners.get(i);
        PlanShape.Corner b = corners.get((i + 1) % corners.size());
        PlanShape.Corner c = corners.get(j);
        PlanShape.Corner d = corners.get((j + 1) % corners.size());
        return overlap(x(a), x(b), x(c), x(d))
                && overlap(y(a), y(b), y(c), y(d))
                && side(a, b, c) * side(a, b, d) <= 0
                && side(c, d, a) * side(c, d, b) <= 0;
    }

    /** Whether the stretch between the first two has a point in common with that between the other two. */
    private static boolean overlap(double a, double b, double c, double d) {
        return Math.max(Math.min(a, b), Math.min(c, d)) <= Math.min(Math.max(a, b), Math.max(c, d));
    }

    /** Over 0 when the point lies to the left of the line, under 0 to its right. */
    private static double side(PlanShape.Corner from, PlanShape.Corner to, PlanShape.Corner point) {
        return (x(to) - x(from)) * (y(point) - y(from)) - (y(to) - y(from)) * (x(point) - x(from));
    }

    private static double x(PlanShape.Corner corner) {
        return corner.x().amount();
    }

    private static double y(PlanShape.Corner corner) {
        return corner.y().amount();
    }
}
