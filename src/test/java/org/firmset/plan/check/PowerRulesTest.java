package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PowerRulesTest {
    /** A drill that draws 400 Wh for each hour of labour: 100 Wh for a quarter-hour. */
    private static Problems drilling(int quarters) {
        return problem().battery(2_000).stage("drill", quarters, s -> s.draws(400));
    }

    @Test
    void a_day_may_empty_the_battery_to_its_floor() {
        keepsEveryRule(drilling(20).trip("may", "2027-05-01", 1), schedule().block("drill", "2027-05-01", 20));
    }

    @Test
    void the_sun_of_the_day_itself_may_be_used_on_top_of_a_full_battery() {
        keepsEveryRule(
                drilling(25).trip("may", "2027-05-01", 1, t -> t.sun(500)),
                schedule().block("drill", "2027-05-01", 25));
    }

    @Test
    void what_a_day_leaves_is_there_on_the_next() {
        keepsEveryRule(
                drilling(25).trip("may", "2027-05-01", 2, t -> t.sun(0, 500)),
                schedule().block("drill", "2027-05-01", 12).block("drill", "2027-05-02", 13));
    }

    @Test
    void every_trip_starts_with_a_full_battery() {
        keepsEveryRule(
                drilling(40).trip("may", "2027-05-01", 1).trip("june", "2027-06-05", 1),
                schedule().block("drill", "2027-05-01", 20).block("drill", "2027-06-05", 20));
    }

    @Test
    void the_generator_may_give_all_it_can_in_parts() {
        keepsEveryRule(
                drilling(23).trip("may", "2027-05-01", 1).generator(300),
                schedule()
                        .block("drill", "2027-05-01", 23)
                        .generator("2027-05-01", 100)
                        .generator("2027-05-01", 200));
    }

    @Test
    void a_generator_that_stands_still_gives_nothing() {
        keepsEveryRule(problem().trip("may", "2027-05-01", 1), schedule().generator("2027-05-01", 0));
    }

    @Nested
    class Refuses {
        private void breaksOnlyPower(Problems problem, Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.POWER, problem, schedule, words);
        }

        @Test
        void work_that_takes_the_battery_under_its_floor() {
            breaksOnlyPower(
                    drilling(26).trip("may", "2027-05-01", 1, t -> t.sun(500)),
                    schedule().block("drill", "2027-05-01", 26),
                    "100 Wh under its floor",
                    "2027-05-01",
                    "[may]",
                    "2000 Wh in the battery",
                    "500 Wh from the sun",
                    "2600 Wh of work");
        }

        @Test
        void work_that_counts_twice_on_what_the_day_before_took() {
            breaksOnlyPower(
                    drilling(21).trip("may", "2027-05-01", 2),
                    schedule().block("drill", "2027-05-01", 12).block("drill", "2027-05-02", 9),
                    "100 Wh under",
                    "2027-05-02",
                    "800 Wh in the battery");
        }

        @Test
        void a_part_of_a_watt_hour_too_much() {
            Problems problem =
                    problem().battery(25).trip("may", "2027-05-01", 1).stage("drill", 1, s -> s.draws(101));
            breaksOnlyPower(problem, schedule().block("drill", "2027-05-01", 1), "1 Wh under", "26 Wh of work");
        }

        @Test
        void sun_that_was_lost_because_the_battery_was_full() {
            breaksOnlyPower(
                    drilling(21).trip("may", "2027-05-01", 2, t -> t.sun(900, 0)),
                    schedule().block("drill", "2027-05-02", 21),
                    "100 Wh under",
                    "2027-05-02");
        }

        @Test
        void sun_that_fills_only_the_room_left_by_half_a_days_work() {
            breaksOnlyPower(
                    drilling(27).trip("may", "2027-05-01", 2, t -> t.sun(900, 0)),
                    schedule().block("drill", "2027-05-01", 6).block("drill", "2027-05-02", 21),
                    "100 Wh under",
                    "2027-05-02",
                    "2000 Wh in the battery");
        }

        @Test
        void sun_of_the_next_day() {
            breaksOnlyPower(
                    drilling(21).trip("may", "2027-05-01", 2, t -> t.sun(0, 900)),
                    schedule().block("drill", "2027-05-01", 21),
                    "100 Wh under",
                    "2027-05-01");
        }

        @Test
        void more_than_the_generator_gives_in_parts_on_one_day() {
            breaksOnlyPower(
                    problem().trip("may", "2027-05-01", 1).generator(300),
                    schedule().generator("2027-05-01", 100).generator("2027-05-01", 201),
                    "301 Wh",
                    "2027-05-01",
                    "300 Wh");
        }

        @Test
        void a_generator_that_takes_energy() {
            breaksOnlyPower(
                    problem().trip("may", "2027-05-01", 1).generator(300),
                    schedule().generator("2027-05-01", -5),
                    "-5 Wh",
                    "2027-05-01");
        }

        @Test
        void a_generator_that_runs_with_nobody_there() {
            breaksOnlyPower(
                    problem().trip("may", "2027-05-01", 1).generator(300),
                    schedule().generator("2027-05-09", 100),
                    "100 Wh",
                    "2027-05-09",
                    "not a site day");
        }

        @Test
        void a_draw_that_would_wrap_round() {
            Problems problem = problem().trip("may", "2027-05-01", 1).stage("drill", 2, s -> s.draws(Long.MAX_VALUE));
            breaksOnlyPower(problem, schedule().block("drill", "2027-05-01", 2), "under its floor", "2027-05-01");
        }

        @Test
        void generator_energy_that_would_wrap_round() {
            Schedules huge = schedule().generator("2027-05-01", Long.MAX_VALUE).generator("2027-05-01", Long.MAX_VALUE);
            assertThat(breaches(problem().trip("may", "2027-05-01", 1).generator(300), huge))
                    .singleElement()
                    .extracting(Breach::rule)
                    .isEqualTo(Rule.POWER);
        }
    }
}
