package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.firmset.trade.climate.DailyTemperature;
import org.junit.jupiter.api.Test;

class CurePropertiesTest {
    private static final int RUNS = 200;

    @Test
    void what_is_warmer_never_cures_later() {
        for (int run = 0; run < RUNS; run++) {
            Climates climates = new Climates(run);
            DailyTemperature temperature = climates.any();
            double more = climates.number(0, 10);
            StrengthGoal goal = climates.goal();
            LocalDate pour = climates.date();
            assertThat(Strength.calendarDaysTo(goal, pour, d -> temperature.celsiusOn(d) + more))
                    .as("seed %d, run %d: %s, %s, %s degrees more", Climates.SEED, run, goal, pour, more)
                    .isLessThanOrEqualTo(Strength.calendarDaysTo(goal, pour, temperature));
        }
    }

    @Test
    void a_higher_share_is_never_there_sooner() {
        for (int run = 0; run < RUNS; run++) {
            Climates climates = new Climates(run);
            DailyTemperature temperature = climates.any();
            StrengthGoal goal = climates.goal();
            double less = climates.number(0.01, 1) * goal.share();
            StrengthGoal lower = new StrengthGoal(less, goal.curve(), goal.ageing());
            LocalDate pour = climates.date();
            assertThat(Strength.calendarDaysTo(goal, pour, temperature))
                    .as("seed %d, run %d: %s against %s, %s", Climates.SEED, run, goal, lower, pour)
                    .isGreaterThanOrEqualTo(Strength.calendarDaysTo(lower, pour, temperature));
        }
    }

    @Test
    void a_later_pour_is_never_ready_sooner() {
        for (int run = 0; run < RUNS; run++) {
            Climates climates = new Climates(run);
            StrengthGoal goal = climates.goal();
            LocalDate first = climates.date();
            CureTable table = CureTable.of(goal, climates.any(), first, first.plusDays(60));
            for (int day = 0; day < 60; day++) {
                LocalDate pour = first.plusDays(day);
                assertThat(table.daysAfter(pour.plusDays(1)) + 1)
                        .as("seed %d, run %d: %s, %s", Climates.SEED, run, goal, pour)
                        .isGreaterThanOrEqualTo(table.daysAfter(pour));
            }
        }
    }
}
