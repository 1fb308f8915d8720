package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PolygonTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);

    private static List<PlanShape.Corner> corners(double... xy) {
        List<PlanShape.Corner> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new PlanShape.Corner(Length.ofMetres(xy[i]), Length.ofMetres(xy[i + 1])));
        }
        return corners;
    }

    /** Round the middle by growing angles, so that no sides cross. */
    private static List<PlanShape.Corner> star(SplittableRandom random) {
        int points = random.nextInt(3, 12);
        double[] xy = new double[2 * points];
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / points;
            double reach = random.nextDouble(1, 9);
            xy[2 * i] = reach * Math.cos(angle) + 3;
            xy[2 * i + 1] = reach * Math.sin(angle) - 2;
        }
        return corners(xy);
    }

    @Test
    void area_and_edge_are_the_same_from_any_corner_and_either_way_round() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int trial = 0; trial < 300; trial++) {
            List<PlanShape.Corner> corners = star(random);
            List<PlanShape.Corner> turned = new ArrayList<>(corners);
            Collections.rotate(turned, random.nextInt(corners.size()));
            List<PlanShape.Corner> back = new ArrayList<>(turned);
            Collections.reverse(back);
            String what = "seed " + SEED + ", trial " + trial + ": " + corners;
            for (List<PlanShape.Corner> other : List.of(turned, back)) {
                assertThat(Polygon.area(other)).as(what).isCloseTo(Polygon.area(corners), within(1e-9));
                assertThat(Polygon.edge(other)).as(what).isCloseTo(Polygon.edge(corners), within(1e-9));
                assertThat(Polygon.crosses(other)).as(what).isEqualTo(Polygon.crosses(corners));
            }
        }
    }

    @Test
    void stars_of_four_and_more_points_do_not_cross_until_two_corners_are_swapped() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int trial = 0; trial < 200; trial++) {
            List<PlanShape.Corner> corners = star(random);
            if (corners.size() < 5) {
                continue;
            }
            String what = "seed " + SEED + ", trial " + trial + ": " + corners;
            assertThat(Polygon.crosses(corners)).as(what).isFalse();
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            a square                       | false | 0 0 2 0 2 2 0 2
            a bow tie                      | true  | 0 0 2 0 0 2 2 2
            a corner on another side       | true  | 0 0 4 0 4 4 2 0 0 4
            a corner on the last side      | true  | 0 0 4 0 2 2 4 4
            a corner just beside it        | false | 0 0 4 0 2.001 2 4 4
            a corner just short of it      | false | 0 0 4 0 4 4 2 0.001 0 4
            two sides in one line, apart   | false | 0 0 6 0 6 3 4 3 4 1 2 1 2 3 0 3
            the same standing              | false | 0 0 0 6 3 6 3 4 1 4 1 2 3 2 3 0
            two sides in one line, touching| true  | 0 0 6 0 6 3 3 3 3 1 2 1 3 3 0 3
            a side beyond the end of another| false| 0 0 3 0 3 1 5 1 5 2 0 2
            a comb crossed from below      | true  | 0 0 6 0 6 3 4 3 4 -1 2 -1 2 3 0 3
            first and last meet as they do | false | 0 0 4 0 4 4
            """)
    void crossings(String what, boolean crosses, String numbers) {
        String[] parts = numbers.split(" ", -1);
        double[] xy = new double[parts.length];
        for (int i = 0; i < xy.length; i++) {
            xy[i] = Double.parseDouble(parts[i]);
        }
        assertThat(Polygon.crosses(corners(xy))).as(what).isEqualTo(crosses);
    }
}
