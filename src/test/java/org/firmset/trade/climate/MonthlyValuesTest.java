package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MonthlyValuesTest {
    private static final MonthlyValues NUMBER_OF_MONTH =
            new MonthlyValues(Stream.iterate(1.0, v -> v + 1).limit(12).toList());

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            2027-01-16,  1
            2027-05-16,  5
            2027-12-16, 12
            2028-02-15,  2
            """)
    void each_value_stands_at_the_middle_of_its_month(LocalDate date, double value) {
        assertThat(NUMBER_OF_MONTH.on(date)).isCloseTo(value, within(1e-12));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            2027-05-31, 5.4839
            2027-06-01, 5.5167
            2027-06-15, 5.9833
            2027-12-31, 6.6774
            2027-01-01, 6.3226
            """)
    void straight_lines_run_between_them_over_the_new_year_too(LocalDate date, double value) {
        assertThat(NUMBER_OF_MONTH.on(date)).isCloseTo(value, within(0.0001));
    }

    @Test
    void no_day_is_outside_the_least_and_the_greatest_value() {
        LocalDate first = LocalDate.of(2027, 1, 1);
        assertThat(first.datesUntil(first.plusYears(5)))
                .allSatisfy(d -> assertThat(NUMBER_OF_MONTH.on(d)).isBetween(1.0, 12.0));
    }

    @Test
    void the_value_of_the_month_itself_does_not_move() {
        assertThat(NUMBER_OF_MONTH.inMonthOf(LocalDate.of(2027, 5, 31))).isEqualTo(5);
    }

    @Test
    void means_lie_half_way_between_highs_and_lows() {
        MonthlyValues tens = new MonthlyValues(Collections.nCopies(12, 10.0));
        assertThat(MonthlyValues.meanOf(NUMBER_OF_MONTH, tens).values())
                .containsExactly(5.5, 6.0, 6.5, 7.0, 7.5, 8.0, 8.5, 9.0, 9.5, 10.0, 10.5, 11.0);
    }

    @Test
    void months_under_a_limit_leave_out_the_month_that_is_at_it() {
        assertThat(NUMBER_OF_MONTH.monthsUnder(3)).containsExactly(Month.JANUARY, Month.FEBRUARY);
        assertThat(NUMBER_OF_MONTH.monthsUnder(12.5)).hasSize(12);
    }

    @Test
    void the_mean_of_the_year_counts_every_month_alike() {
        assertThat(NUMBER_OF_MONTH.yearMean()).isEqualTo(6.5);
    }

    @Test
    void eleven_values_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MonthlyValues(List.of(1.0, 2.0)))
                .withMessage("values [1.0, 2.0] must be twelve, one for each month");
    }
}
