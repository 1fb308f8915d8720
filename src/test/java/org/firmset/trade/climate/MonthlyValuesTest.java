package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
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
    void eleven_values_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MonthlyValues(List.of(1.0, 2.0)))
                .withMessage("values [1.0, 2.0] must be twelve, one for each month");
    }
}
