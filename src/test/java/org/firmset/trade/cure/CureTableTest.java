package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.trade.climate.DailyTemperature;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CureTableTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 5, 1);
    private static final StrengthGoal SEVENTY = new StrengthGoal(0.7, StrengthCurve.EN_NORMAL, Ageing.EN_1992);

    @Test
    void every_date_has_its_days() {
        DailyTemperature coldFirst = date -> date.isBefore(FIRST.plusDays(4)) ? 5 : 20;
        // 3 days at 5 °C make 1.43 of the 4.75 days, 3.33 more at 20 °C are needed; then 2 days make 0.96, and so on
        CureTable table = CureTable.of(SEVENTY, coldFirst, FIRST, FIRST.plusDays(4));
        assertThat(table.days()).containsExactly(7, 6, 6, 5, 5);
        assertThat(table.daysAfter(FIRST)).isEqualTo(7);
        assertThat(table.daysAfter(FIRST.plusDays(4))).isEqualTo(5);
        assertThat(table.first()).isEqualTo(FIRST);
        assertThat(table.last()).isEqualTo(FIRST.plusDays(4));
    }

    @Test
    void what_never_gets_warm_takes_ten_years_and_no_longer() {
        assertThat(CureTable.of(SEVENTY, d -> -5, FIRST, FIRST.plusDays(2)).days())
                .isEqualTo(List.of(3650, 3650, 3650));
    }

    @ParameterizedTest
    @EnumSource
    void sums_that_are_exactly_enough_are_enough(Ageing ageing) {
        // 280 days of a tenth: no binary fraction may make a day more or less of it
        double celsius = ageing == Ageing.NURSE_SAUL_MINUS_TEN ? -7 : 2;
        StrengthGoal all = new StrengthGoal(1, StrengthCurve.EN_NORMAL, ageing);
        int days = CureTable.of(all, d -> celsius, FIRST, FIRST.plusYears(5)).daysAfter(FIRST.plusYears(5));
        assertThat(days)
                .isEqualTo(Strength.calendarDaysTo(all, FIRST, d -> celsius))
                .isEqualTo((int) Math.ceil(28 / ageing.factor(celsius) - 1e-6));
    }

    @Test
    void is_what_counting_day_by_day_gives() {
        for (int run = 0; run < 200; run++) {
            Climates climates = new Climates(run);
            DailyTemperature temperature = climates.any();
            StrengthGoal goal = climates.goal();
            LocalDate first = climates.date();
            LocalDate last = first.plusDays(climates.whole(40));
            CureTable table = CureTable.of(goal, temperature, first, last);
            for (LocalDate pour = first; !pour.isAfter(last); pour = pour.plusDays(1)) {
                assertThat(table.daysAfter(pour))
                        .as("seed %d, run %d: %s, %s", Climates.SEED, run, goal, pour)
                        .isEqualTo(Strength.calendarDaysTo(goal, pour, temperature));
            }
        }
    }

    @Test
    void asks_for_the_temperature_of_each_date_once() {
        Map<LocalDate, Integer> asked = new HashMap<>();
        DailyTemperature frost = date -> {
            asked.merge(date, 1, Integer::sum);
            return -5;
        };
        CureTable.of(SEVENTY, frost, FIRST, FIRST.plusDays(364));
        assertThat(asked).hasSize(364 + 3650);
        assertThat(asked.values()).containsOnly(1);
    }

    @Nested
    class Refusals {
        @Test
        void a_span_that_ends_before_it_begins() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> CureTable.of(SEVENTY, d -> 20, FIRST, FIRST.minusDays(1)))
                    .withMessage("last [2027-04-30] must not be before first [2027-05-01]");
        }

        @Test
        void a_date_outside_the_span() {
            CureTable table = CureTable.of(SEVENTY, d -> 20, FIRST, FIRST);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> table.daysAfter(FIRST.minusDays(1)))
                    .withMessage("pour [2027-04-30] must be from 2027-05-01 to 2027-05-01");
            assertThatIllegalArgumentException().isThrownBy(() -> table.daysAfter(FIRST.plusDays(1)));
        }
    }
}
