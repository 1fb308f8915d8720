package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WetDaysTest {
    private static final List<Double> COUNTS =
            List.of(16.5, 12.0, 13.0, 11.0, 8.5, 5.0, 3.0, 4.0, 7.0, 11.0, 15.0, 17.0);
    private static final WetDays WET = WetDays.of(new MonthlyValues(COUNTS), 0.42);
    private static final LocalDate FIRST = LocalDate.of(2027, 1, 1);

    @Test
    void the_odds_of_a_months_days_add_up_to_its_wet_days() {
        for (Month month : Month.values()) {
            double sum = IntStream.rangeClosed(1, month.minLength())
                    .mapToDouble(d -> WET.wetOdds(LocalDate.of(2027, month, d)))
                    .sum();
            double expected = COUNTS.get(month.getValue() - 1) * month.minLength() / WetDays.daysIn(month);
            assertThat(sum).as("%s", month).isCloseTo(expected, within(1e-6));
        }
    }

    @Test
    void drawn_years_have_the_wet_days_of_each_month_in_mean() {
        long seed = Long.getLong("firmset.seed", 2027);
        int years = 2000;
        double[] counts = new double[12];
        for (int year = 0; year < years; year++) {
            BitSet wet = WET.draw(FIRST, 365, seed + year);
            wet.stream().forEach(day -> counts[FIRST.plusDays(day).getMonthValue() - 1] += 1.0 / years);
        }
        for (Month month : Month.values()) {
            double expected = COUNTS.get(month.getValue() - 1) * month.minLength() / WetDays.daysIn(month);
            // 2000 drawn months lie within 0.3 days; the chain follows the year with less than a day's delay
            assertThat(counts[month.getValue() - 1])
                    .as("%s, -Dfirmset.seed=%d", month, seed)
                    .isCloseTo(expected, within(0.3));
        }
    }

    @Test
    void drawn_days_hang_together_as_the_chain_says() {
        WetDays even = WetDays.of(
                new MonthlyValues(IntStream.rangeClosed(1, 12)
                        .mapToObj(m -> 0.4 * WetDays.daysIn(Month.of(m)))
                        .toList()),
                0.42);
        int days = 200_000;
        BitSet wet = even.draw(FIRST, days, 7);
        int[] pairs = new int[4];
        IntStream.range(1, days).forEach(d -> pairs[(wet.get(d - 1) ? 2 : 0) + (wet.get(d) ? 1 : 0)]++);
        WetDryChain counted = WetDryChain.counted(pairs[0], pairs[1], pairs[2], pairs[3]);
        assertThat(counted.persistence()).isCloseTo(0.42, within(0.01));
        assertThat(counted.wetShare()).isCloseTo(0.4, within(0.01));
        assertThat(wet).isEqualTo(even.draw(FIRST, days, 7)).isNotEqualTo(even.draw(FIRST, days, 8));
    }

    @Test
    void drawn_runs_of_three_dry_days_are_as_many_as_the_odds_say() {
        LocalDate may = LocalDate.of(2027, 5, 10);
        int dry = 0;
        for (int seed = 0; seed < 20_000; seed++) {
            dry += WET.draw(may, 3, seed).isEmpty() ? 1 : 0;
        }
        assertThat(dry / 20_000.0).isCloseTo(WET.dryInARow(may, 3), within(0.012));
    }

    @Test
    void months_all_dry_or_all_wet_are_so() {
        WetDays dry = WetDays.of(new MonthlyValues(Collections.nCopies(12, 0.0)), 0.42);
        assertThat(dry.dryInARow(FIRST, 30)).isEqualTo(1);
        assertThat(dry.draw(FIRST, 365, 1).isEmpty()).isTrue();
        WetDays wet = WetDays.of(
                new MonthlyValues(IntStream.rangeClosed(1, 12)
                        .mapToObj(m -> WetDays.daysIn(Month.of(m)))
                        .toList()),
                0.42);
        assertThat(wet.draw(FIRST, 365, 1).cardinality()).isEqualTo(365);
    }

    @Test
    void refuses_more_wet_days_than_a_month_has() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WetDays.of(new MonthlyValues(Collections.nCopies(12, 30.0)), 0.42))
                .withMessage("wetDays of FEBRUARY [30.0] must be from 0.0 to 28.25");
    }
}
