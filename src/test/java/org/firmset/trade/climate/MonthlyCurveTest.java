package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthlyCurveTest {
    private static final List<Double> HIGHS =
            List.of(6.2, 8.4, 12.1, 16.1, 21.4, 27.8, 31.1, 30.0, 25.2, 18.9, 10.8, 6.7);

    @Test
    void the_mean_over_each_month_is_the_months_value_in_years_of_365_and_366_days() {
        for (int year : new int[] {2027, 2028}) {
            for (int month = 1; month <= 12; month++) {
                assertThat(mean(HIGHS, YearMonth.of(year, month)))
                        .as("%d-%d", year, month)
                        .isCloseTo(HIGHS.get(month - 1), within(1e-9));
            }
        }
    }

    @Test
    void so_it_is_for_any_months_however_wild() {
        long seed = Long.getLong("firmset.seed", 2027);
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            List<Double> values = DoubleStream.generate(() -> random.nextDouble(-60, 60))
                    .limit(12)
                    .boxed()
                    .toList();
            for (int month = 1; month <= 12; month++) {
                assertThat(mean(values, YearMonth.of(2027, month)))
                        .as("-Dfirmset.seed=%d, number %d, month %d", seed, i, month)
                        .isCloseTo(values.get(month - 1), within(1e-9));
            }
        }
    }

    @Test
    void the_straight_curve_misses_july_by_more_than_a_tenth_of_a_degree() {
        MonthlyValues straight = new MonthlyValues(HIGHS);
        double july = IntStream.rangeClosed(1, 31)
                .mapToDouble(d -> straight.on(LocalDate.of(2027, 7, d)))
                .average()
                .orElseThrow();
        assertThat(31.1 - july).isBetween(0.1, 1.0);
    }

    @Test
    void no_day_jumps_and_december_runs_into_january() {
        MonthlyCurve curve = MonthlyCurve.of(new MonthlyValues(HIGHS));
        LocalDate first = LocalDate.of(2027, 1, 1);
        for (int day = 0; day < 366; day++) {
            double step = curve.on(first.plusDays(day + 1)) - curve.on(first.plusDays(day));
            assertThat(Math.abs(step)).as("%s", first.plusDays(day)).isLessThan(0.4);
        }
    }

    @Test
    void equal_months_make_equal_days() {
        MonthlyCurve curve = MonthlyCurve.of(new MonthlyValues(Collections.nCopies(12, 7.5)));
        assertThat(curve.on(LocalDate.of(2027, 1, 1))).isCloseTo(7.5, within(1e-12));
        assertThat(curve.on(LocalDate.of(2028, 2, 29))).isCloseTo(7.5, within(1e-12));
    }

    private static double mean(List<Double> values, YearMonth month) {
        MonthlyCurve curve = MonthlyCurve.of(new MonthlyValues(values));
        return IntStream.rangeClosed(1, month.lengthOfMonth())
                .mapToDouble(d -> curve.on(month.atDay(d)))
                .average()
                .orElseThrow();
    }
}
