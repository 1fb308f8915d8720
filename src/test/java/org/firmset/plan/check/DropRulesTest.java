package org.firmset.plan.check;

import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.firmset.plan.Load.TRUCK;
import static org.firmset.plan.Problems.STATUS_DATE;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.time.LocalDate;
import java.time.Month;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The quarry drops on Wednesdays and Saturdays, the mill only with somebody there. Trips begin on Saturdays. */
class DropRulesTest {
    private static final DeliveryOffer MILL = new DeliveryOffer(
            "mill", "Mill", Set.of("sand", "cement"), 900_000, STATUS_DATE, Set.of(WEDNESDAY, SATURDAY), 0);

    private final Problems problem = problem()
            .trip("may", "2027-05-01", 2)
            .trip("june", "2027-06-05", 2)
            .material("sand", m -> m.shelfLife(3))
            .material("cement", m -> m.dry())
            .offer(MILL)
            .offer(new DeliveryOffer(
                            "quarry",
                            "Quarry",
                            Set.of("sand", "cement"),
                            900_000,
                            STATUS_DATE,
                            Set.of(WEDNESDAY, SATURDAY),
                            0)
                    .withAttended(false));

    private static Schedules forJune(String broughtOn, String material) {
        return schedule().dropped("june", "2027-06-05", broughtOn, "quarry", load(material, TRUCK, 2));
    }

    @Test
    void goods_may_be_dropped_between_two_trips() {
        keepsEveryRule(problem, forJune("2027-06-02", "sand"));
        keepsEveryRule(problem, forJune("2027-05-05", "sand"));
    }

    @Test
    void they_may_also_be_met() {
        keepsEveryRule(problem, forJune("2027-06-05", "cement"));
    }

    @Test
    void they_may_be_dropped_before_the_first_trip_from_the_status_date_on() {
        Problems first = problem()
                .trip("may", "2027-05-08", 1)
                .material("sand")
                .material("cement")
                .offer(MILL.withAttended(false).withEarliest(STATUS_DATE.minusDays(9)));
        keepsEveryRule(first, schedule().dropped("may", "2027-05-08", "2027-05-01", "mill", load("sand", TRUCK, 1)));
        Verdicts.breaksOnly(
                Rule.RUNS,
                first,
                schedule().dropped("may", "2027-05-08", "2027-04-28", "mill", load("sand", TRUCK, 1)),
                "2027-04-28",
                "status date 2027-05-01");
    }

    @Test
    void what_was_dropped_ages_from_the_drop() {
        problem.stage("fill", 4, s -> s.needs("sand", 2));
        keepsEveryRule(problem, forJune("2027-06-02", "sand").block("fill", "2027-06-05", 4));
        Verdicts.breaksOnly(
                Rule.SUPPLIES,
                problem,
                forJune("2027-06-02", "sand").block("fill", "2027-06-06", 4),
                "[Fill]",
                "2027-06-06",
                "2 have gone off");
    }

    @Nested
    class Refuses {
        private void breaksOnlyRuns(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.RUNS, problem, schedule, words);
        }

        @Test
        void a_drop_where_somebody_must_be_there() {
            breaksOnlyRuns(
                    schedule().dropped("june", "2027-06-05", "2027-06-02", "mill", load("sand", TRUCK, 1)),
                    "[Mill]",
                    "2027-06-02",
                    "somebody must be there");
        }

        @Test
        void a_drop_of_what_must_be_kept_dry() {
            breaksOnlyRuns(forJune("2027-06-02", "cement"), "[Quarry]", "[Cement]", "2027-06-02", "kept dry");
        }

        @Test
        void a_drop_during_the_possible_trip_before() {
            breaksOnlyRuns(forJune("2027-05-01", "sand"), "2027-05-01", "lasts to 2027-05-02");
        }

        @Test
        void a_drop_after_the_trip_has_begun() {
            problem.trip("july", "2027-07-03", 1);
            breaksOnlyRuns(forJune("2027-06-09", "sand"), "2027-06-09", "after the trip of 2027-06-05 has begun");
        }

        @Test
        void a_drop_for_a_later_day_of_the_trip() {
            breaksOnlyRuns(
                    schedule().dropped("june", "2027-06-06", "2027-06-02", "quarry", load("sand", TRUCK, 1)),
                    "for 2027-06-06",
                    "first date 2027-06-05");
        }

        @Test
        void a_drop_on_the_wrong_weekday() {
            breaksOnlyRuns(forJune("2027-06-03", "sand"), "[Quarry]", "2027-06-03, a THURSDAY");
        }

        @Test
        void a_drop_of_what_can_be_had_only_later() {
            problem.material("stone", m -> m.availableFrom("2027-06-03"))
                    .offer(new DeliveryOffer("pit", "Pit", Set.of("stone"), 900_000, STATUS_DATE, Set.of(WEDNESDAY), 0)
                            .withAttended(false));
            Verdicts.breaksOnly(
                    Rule.SUPPLIES,
                    problem,
                    schedule().dropped("june", "2027-06-05", "2027-06-02", "pit", load("stone", TRUCK, 1)),
                    "[Stone]",
                    "2027-06-02",
                    "from 2027-06-03");
        }

        @Test
        void a_truck_in_a_month_in_which_none_comes() {
            problem.offer(new DeliveryOffer("pit", "Pit", Set.of("sand"), 900_000, STATUS_DATE, Set.of(SATURDAY), 0)
                    .withShutMonths(Set.of(Month.JUNE)));
            breaksOnlyRuns(
                    schedule().delivery("june", "2027-06-05", "pit", load("sand", TRUCK, 1)),
                    "[Pit]",
                    "2027-06-05",
                    "[JUNE]");
            keepsEveryRule(problem, schedule().delivery("may", "2027-05-01", "pit", load("sand", TRUCK, 1)));
        }

        @Test
        void people_who_come_before_they_come() {
            breaksOnlyRuns(
                    schedule()
                            .run(new Run(
                                    "june",
                                    LocalDate.parse("2027-06-05"),
                                    RunKind.ARRIVAL,
                                    "",
                                    java.util.List.of(load("sand", "bed", 1)),
                                    LocalDate.parse("2027-06-02"))),
                    "arrival run",
                    "2027-06-05",
                    "2027-06-02",
                    "only a delivery");
        }
    }
}
