package org.firmset.plan.check;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SUNDAY;
import static org.firmset.plan.Load.TRUCK;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.time.LocalDate;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DeliveryRulesTest {
    /** From Sunday 2027-05-02 on Sundays and Mondays, up to 1000 kg of sand. */
    private final Problems problem = problem()
            .trip("may", "2027-05-01", 4)
            .trip("june", "2027-06-05", 2)
            .material("sand", m -> m.grams(100_000).millimetres(9_999_999))
            .material("cement")
            .offer(offer("quarry"));

    private static DeliveryOffer offer(String id) {
        return new DeliveryOffer(
                id, "Quarry", Set.of("sand"), 1_000_000, LocalDate.parse("2027-05-02"), Set.of(SUNDAY, MONDAY), 9_000);
    }

    @Test
    void a_delivery_may_come_on_the_earliest_date_with_a_full_truck() {
        keepsEveryRule(
                problem,
                schedule().delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 4), load("sand", TRUCK, 6)));
    }

    @Test
    void an_offer_may_be_used_on_several_dates_and_beside_another() {
        problem.offer(offer("other"));
        keepsEveryRule(
                problem,
                schedule()
                        .delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 10))
                        .delivery("may", "2027-05-02", "other", load("sand", TRUCK, 10))
                        .delivery("may", "2027-05-03", "quarry", load("sand", TRUCK, 10)));
    }

    @Nested
    class Refuses {
        private void breaksOnlyRuns(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.RUNS, problem, schedule, words);
        }

        @Test
        void a_delivery_with_nobody_there() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-10", "quarry", load("sand", TRUCK, 1)),
                    "[Quarry]",
                    "2027-05-10",
                    "not a site day");
        }

        @Test
        void a_delivery_on_a_day_of_another_trip() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-06-06", "quarry", load("sand", TRUCK, 1)),
                    "[Quarry]",
                    "2027-06-06",
                    "[may]",
                    "2027-05-01 to 2027-05-04");
        }

        @Test
        void a_delivery_on_the_wrong_weekday() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-04", "quarry", load("sand", TRUCK, 1)),
                    "[Quarry]",
                    "2027-05-04, a TUESDAY",
                    "[MONDAY, SUNDAY]");
        }

        @Test
        void a_delivery_before_the_earliest_date() {
            Problems late = problem()
                    .trip("may", "2027-05-01", 4)
                    .material("sand")
                    .offer(new DeliveryOffer(
                            "quarry",
                            "Quarry",
                            Set.of("sand"),
                            1_000_000,
                            LocalDate.parse("2027-05-03"),
                            Set.of(SUNDAY),
                            0));
            Verdicts.breaksOnly(
                    Rule.RUNS,
                    late,
                    schedule().delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 1)),
                    "[Quarry]",
                    "2027-05-02",
                    "from 2027-05-03");
        }

        @Test
        void two_deliveries_of_one_offer_on_one_date() {
            breaksOnlyRuns(
                    schedule()
                            .delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 1))
                            .delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 1)),
                    "[Quarry]",
                    "more than once",
                    "2027-05-02");
        }

        @Test
        void a_material_the_offer_does_not_bring() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-02", "quarry", load("cement", TRUCK, 3)),
                    "[Quarry]",
                    "[cement]",
                    "3 packs",
                    "2027-05-02");
        }

        @Test
        void a_truck_that_is_too_heavy() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 5), load("sand", TRUCK, 6)),
                    "[Quarry]",
                    "2027-05-02",
                    "1100000 g",
                    "1000000 g");
        }

        @Test
        void a_delivery_in_a_bay_of_the_rig() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-02", "quarry", load("sand", "bed", 1)),
                    "1 packs",
                    "[sand]",
                    "[bed]",
                    "[truck]");
        }

        @Test
        void an_offer_nobody_knows() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-02", "baker", load("sand", TRUCK, 1)),
                    "2027-05-02",
                    "[baker]",
                    "not known");
        }

        @Test
        void a_delivery_for_a_trip_nobody_knows() {
            breaksOnlyRuns(
                    schedule().delivery("july", "2027-05-02", "quarry", load("sand", TRUCK, 1)),
                    "delivery",
                    "2027-05-02",
                    "[july]");
        }

        @Test
        void a_delivery_of_no_packs() {
            breaksOnlyRuns(
                    schedule().delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, -2)), "-2 packs", "[sand]");
        }
    }
}
