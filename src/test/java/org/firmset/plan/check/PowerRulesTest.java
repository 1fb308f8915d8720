package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.util.ArrayList;
import java.util.List;
import org.firmset.plan.DayPower;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedule;
import org.firmset.plan.Schedules;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Trip;
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

    @Test
    void work_by_more_people_is_over_sooner_and_draws_no_more() {
        keepsEveryRule(
                drilling(20).trip("may", "2027-05-01", 1, t -> t.people(5)),
                schedule().block("drill", "2027-05-01", 20));
    }

    @Test
    void a_trip_without_work_that_draws_is_not_judged() {
        keepsEveryRule(
                drilling(4)
                        .stage("dig", 8)
                        .trip("may", "2027-05-01", 1, t -> t.startsWith(0).power(p -> changed(p, 50, 300, true)))
                        .trip("june", "2027-06-05", 1),
                schedule().block("dig", "2027-05-01", 8).block("drill", "2027-06-05", 4));
    }

    @Test
    void work_that_waits_for_the_sun() {
        keepsEveryRule(
                drilling(16).trip("may", "2027-05-01", 1, t -> t.startsWith(800).power(p -> sunAt(p, 8, 800))),
                schedule().block("drill", "2027-05-01", 16));
    }

    /** The same day with other loads and floor. */
    private static DayPower changed(DayPower day, long base, long floor, boolean charges) {
        return new DayPower(day.sunWatts(), base, floor, charges, day.workFromHour());
    }

    private static DayPower sunAt(DayPower day, int hour, long watts) {
        List<Long> sun = new ArrayList<>(day.sunWatts());
        sun.set(hour, watts);
        return new DayPower(sun, day.baseWatts(), day.floorWattHours(), day.charges(), day.workFromHour());
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
                    "hour from 10:00",
                    "[may]");
        }

        @Test
        void work_that_counts_twice_on_what_the_day_before_took() {
            breaksOnlyPower(
                    drilling(21).trip("may", "2027-05-01", 2),
                    schedule().block("drill", "2027-05-01", 12).block("drill", "2027-05-02", 9),
                    "100 Wh under",
                    "hour from 8:00 on 2027-05-02");
        }

        @Test
        void a_part_of_a_watt_hour_too_much() {
            Problems problem =
                    problem().battery(25).trip("may", "2027-05-01", 1).stage("drill", 1, s -> s.draws(101));
            breaksOnlyPower(problem, schedule().block("drill", "2027-05-01", 1), "1 Wh under");
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
                    "2027-05-02");
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
        void sun_that_comes_after_the_work() {
            breaksOnlyPower(
                    drilling(16)
                            .trip(
                                    "may",
                                    "2027-05-01",
                                    1,
                                    t -> t.startsWith(1_500).power(p -> sunAt(p, 12, 900))),
                    schedule().block("drill", "2027-05-01", 16),
                    "100 Wh under",
                    "hour from 8:00");
        }

        @Test
        void lamps_that_burn_all_night() {
            breaksOnlyPower(
                    drilling(16).trip("may", "2027-05-01", 2, t -> t.power(p -> changed(p, 20, 0, true))),
                    schedule().block("drill", "2027-05-01", 8).block("drill", "2027-05-02", 8),
                    "100 Wh under",
                    "hour from 7:00 on 2027-05-02");
        }

        @Test
        void a_floor_that_the_cold_of_the_next_day_lifts() {
            problemWithColdSecondDay("hour from 0:00 on 2027-05-02");
        }

        private void problemWithColdSecondDay(String words) {
            Problems problem = drilling(16).trip("may", "2027-05-01", 2);
            PlanningProblem built = problem.build();
            Trip trip = built.trips().getFirst();
            SiteDay second = trip.days().getLast();
            SiteDay cold = second.withPower(changed(second.power(), 0, 1_300, true));
            Trip changed = trip.withDays(List.of(trip.days().getFirst(), cold));
            Schedule schedule = schedule()
                    .block("drill", "2027-05-01", 8)
                    .block("drill", "2027-05-02", 8)
                    .build();
            assertThat(PlanChecker.check(built.withTrips(List.of(changed)), schedule))
                    .singleElement()
                    .satisfies(b -> assertThat(b.message()).contains(words));
        }

        @Test
        void what_is_lost_in_charging_and_drawing() {
            PowerSupply lossy = new PowerSupply(1_000, 80, 50, PowerSupply.Generator.NONE);
            // 8 quarter-hours take 800 Wh, of which 200 are sun: 600 out of the battery at 50 % are 1,200
            breaksOnlyPower(
                    drilling(8).power(lossy).trip("may", "2027-05-01", 1, t -> t.sun(200)),
                    schedule().block("drill", "2027-05-01", 8),
                    "200 Wh under");
        }

        @Test
        void charging_a_battery_that_is_too_cold() {
            breaksOnlyPower(
                    drilling(24)
                            .trip("may", "2027-05-01", 2, t -> t.power(p -> changed(sunAt(p, 12, 900), 0, 0, false))),
                    schedule().block("drill", "2027-05-01", 12).block("drill", "2027-05-02", 12),
                    "400 Wh under",
                    "2027-05-02");
        }

        @Test
        void the_thirstiest_work_after_the_other() {
            // 8 quarter-hours of grinding take 1,600 Wh in the first hour, whatever order the plan names
            breaksOnlyPower(
                    drilling(8)
                            .stage("grind", 8, s -> s.draws(800))
                            .trip(
                                    "may",
                                    "2027-05-01",
                                    1,
                                    t -> t.startsWith(1_500).power(p -> sunAt(p, 8, 1_000))),
                    schedule().block("drill", "2027-05-01", 8).block("grind", "2027-05-01", 8),
                    "100 Wh under",
                    "hour from 7:00");
        }

        @Test
        void work_that_goes_on_past_midnight() {
            // one person from 23:00: all of it counts in the last hour
            breaksOnlyPower(
                    drilling(21)
                            .trip(
                                    "may",
                                    "2027-05-01",
                                    1,
                                    t -> t.people(1).power(p -> new DayPower(p.sunWatts(), 0, 0, true, 23))),
                    schedule().block("drill", "2027-05-01", 21),
                    "100 Wh under",
                    "hour from 23:00");
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
