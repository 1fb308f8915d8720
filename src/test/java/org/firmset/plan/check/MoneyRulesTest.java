package org.firmset.plan.check;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Load.TRUCK;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.breaksOnly;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.PowerSupply;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A trip costs 10000 cents, an extra run 2000, a delivery 900, a pack of sand 500 and a kWh of fuel 60. */
class MoneyRulesTest {
    /** The trip in June is two days of June, and then two of July. */
    private final Problems problem = problem()
            .trip("may", "2027-05-01", 3, t -> t.extraRuns(2, 4))
            .trip("june", "2027-06-29", 4, t -> t.extraRuns(2, 4))
            .material("sand")
            .offer(quarry("quarry", 900))
            .generator(5_000);

    private static DeliveryOffer quarry(String id, long cents) {
        return new DeliveryOffer(
                id, "Quarry", Set.of("sand"), 9_000_000, Problems.STATUS_DATE, Set.of(SUNDAY, MONDAY, TUESDAY), cents);
    }

    /** Some packs on each kind of run, all runs there can be, and fuel for one and a half kWh. */
    private static Schedules fullMonth() {
        return schedule()
                .arrival("may", "2027-05-01", load("sand", "bed", 1))
                .extra("may", "2027-05-01", load("sand", "bed", 2))
                .extra("may", "2027-05-01")
                .delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 3))
                .generator("2027-05-03", 1_500);
    }

    private static final long FULL_MONTH_CENTS = 10_000 + 2 * 2_000 + 900 + 6 * 500 + 90;

    /** Keeps a limit of the cents and not one of a cent less. */
    private void takes(long cents, Schedules schedule, String month) {
        keepsEveryRule(problem.spending(cents, true), schedule);
        breaksOnly(
                Rule.MONEY,
                problem.spending(cents - 1, true),
                schedule,
                month,
                "takes " + cents + " cents",
                "may take " + (cents - 1));
    }

    @Test
    void a_month_may_take_its_last_cent_and_not_one_more() {
        takes(FULL_MONTH_CENTS, fullMonth(), "2027-05");
    }

    @Test
    void a_breach_tells_where_the_money_goes() {
        breaksOnly(
                Rule.MONEY,
                problem.spending(0, true),
                fullMonth(),
                "2027-05",
                "trips 10000",
                "extra runs 4000",
                "deliveries 900",
                "materials 3000",
                "fuel 90");
    }

    @Test
    void nothing_may_be_spent_where_nothing_may_be() {
        keepsEveryRule(problem.spending(0, true), schedule());
    }

    @Test
    void a_limit_that_is_only_wished_for_is_no_rule() {
        keepsEveryRule(problem.spending(0, false), fullMonth());
    }

    @Test
    void without_a_limit_everything_may_be_spent() {
        keepsEveryRule(problem, fullMonth());
    }

    /** Goods are worth 500 a pack. */
    @Nested
    class SmallOrders {
        private void quarryOf(long leastOrder) {
            problem.offer(quarry("other", 900).withSmallOrders(leastOrder, 70));
        }

        private static Schedules packs(int first, int second) {
            return schedule()
                    .delivery("may", "2027-05-02", "other", load("sand", TRUCK, first), load("sand", TRUCK, second));
        }

        @Test
        void take_a_fee_when_goods_are_worth_a_cent_less_than_the_least_order() {
            quarryOf(1_501);
            takes(10_000 + 900 + 70 + 1_500, packs(1, 2), "2027-05");
        }

        @Test
        void end_at_the_least_order() {
            quarryOf(1_500);
            takes(10_000 + 900 + 1_500, packs(1, 2), "2027-05");
        }

        @Test
        void are_each_delivery_by_itself() {
            quarryOf(1_500);
            takes(
                    10_000 + 2 * 900 + 70 + 2_500,
                    packs(1, 2).delivery("may", "2027-05-03", "other", load("sand", TRUCK, 2)),
                    "2027-05");
        }

        @Test
        void are_paid_in_the_month_they_are_for() {
            problem.offer(new DeliveryOffer(
                            "drop", "Drop", Set.of("sand"), 9_000_000, Problems.STATUS_DATE, Set.of(MONDAY), 900)
                    .withSmallOrders(1_000, 70)
                    .withAttended(false));
            takes(
                    10_000 + 900 + 70 + 500,
                    schedule().dropped("june", "2027-06-29", "2027-05-31", "drop", load("sand", TRUCK, 1)),
                    "2027-06");
        }
    }

    @Nested
    class Trips {
        @Test
        void is_paid_when_it_has_a_block() {
            problem.stage("slab", 10);
            takes(10_000, schedule().block("slab", "2027-05-02", 10), "2027-05");
        }

        @Test
        void is_paid_when_it_has_a_run() {
            takes(10_000, schedule().arrival("may", "2027-05-01"), "2027-05");
        }

        @Test
        void is_paid_when_it_has_a_delivery() {
            takes(10_900, schedule().delivery("may", "2027-05-03", "quarry"), "2027-05");
        }

        @Test
        void is_paid_once_for_all_that_is_done_on_it() {
            problem.stage("slab", 10).stage("drain", 10);
            takes(
                    10_900,
                    schedule()
                            .block("slab", "2027-05-02", 5)
                            .block("drain", "2027-05-02", 10)
                            .block("slab", "2027-05-03", 5)
                            .arrival("may", "2027-05-01")
                            .delivery("may", "2027-05-02", "quarry"),
                    "2027-05");
        }

        @Test
        void is_not_paid_when_nothing_is_done_on_it() {
            problem.stage("slab", 10).spending(0, true);
            assertThat(breaches(problem, schedule().block("slab", "2027-05-02", 10)))
                    .singleElement()
                    .extracting(Breach::message)
                    .asString()
                    .contains("2027-05", "trips 10000");
        }

        @Test
        void is_paid_in_the_month_in_which_it_begins() {
            problem.stage("slab", 10);
            takes(10_000, schedule().block("slab", "2027-07-01", 10), "2027-06");
        }

        @Test
        void is_paid_beside_the_others_of_its_month() {
            problem.trip("july", "2027-07-09", 1)
                    .trip("august", "2027-07-31", 2)
                    .stage("slab", 10);
            takes(20_000, schedule().block("slab", "2027-07-09", 5).block("slab", "2027-08-01", 5), "2027-07");
        }

        @Test
        void of_the_same_month_in_another_year_is_paid_on_its_own() {
            problem.trip("later", "2028-05-06", 1).stage("slab", 10).spending(10_000, true);
            keepsEveryRule(problem, schedule().block("slab", "2027-05-01", 5).block("slab", "2028-05-06", 5));
        }
    }

    @Nested
    class Materials {
        @Test
        void are_paid_in_the_month_in_which_they_are_carried() {
            problem.stage("slab", 10, s -> s.needs("sand", 40));
            Schedules carriedInMayUsedInJuly = schedule()
                    .delivery("may", "2027-05-02", "quarry", load("sand", TRUCK, 40))
                    .block("slab", "2027-07-01", 10);
            takes(10_900 + 40 * 500, carriedInMayUsedInJuly, "2027-05");
        }

        @Test
        void that_come_after_the_end_of_the_month_are_not_paid_with_the_trip() {
            problem.offer(new DeliveryOffer(
                    "late",
                    "Late",
                    Set.of("sand"),
                    9_000_000,
                    LocalDate.parse("2027-07-01"),
                    Set.of(LocalDate.parse("2027-07-01").getDayOfWeek()),
                    9_000));
            takes(
                    9_000 + 4 * 500,
                    schedule().delivery("june", "2027-07-01", "late", load("sand", TRUCK, 4)),
                    "2027-07");
        }

        @Test
        void that_are_on_site_already_cost_nothing() {
            problem.stage("slab", 10, s -> s.needs("sand", 3)).stock("sand", 5, "2027-04-03");
            takes(10_000, schedule().block("slab", "2027-05-01", 10), "2027-05");
        }
    }

    @Nested
    class Fuel {
        private Schedules generator(long... wattHoursFromFirstOfMay) {
            Schedules schedule = schedule().arrival("may", "2027-05-01");
            for (int day = 0; day < wattHoursFromFirstOfMay.length; day++) {
                schedule.generator("2027-05-0" + (day + 1), wattHoursFromFirstOfMay[day]);
            }
            return schedule;
        }

        @Test
        void is_rounded_up_to_a_cent() {
            takes(10_001, generator(1), "2027-05");
            takes(10_061, generator(1_001), "2027-05");
        }

        @Test
        void is_not_rounded_where_it_comes_out_even() {
            takes(10_003, generator(50), "2027-05");
        }

        @Test
        void is_rounded_once_for_a_month() {
            takes(10_001, generator(5, 5, 5), "2027-05");
        }

        @Test
        void is_rounded_for_each_month() {
            problem.spending(0, true);
            assertThat(breaches(problem, schedule().generator("2027-06-30", 5).generator("2027-07-01", 5)))
                    .extracting(Breach::message)
                    .satisfiesExactly(
                            june -> assertThat(june).startsWith("2027-06").contains("takes 1 cents"),
                            july -> assertThat(july).startsWith("2027-07").contains("takes 1 cents"));
        }

        @Test
        void alone_makes_no_trip() {
            takes(60, schedule().generator("2027-05-02", 1_000), "2027-05");
        }
    }

    /** What makes no sense is a breach of its own and must not pay for anything else. */
    @Nested
    class Nonsense {
        private void breaks(long limit, Schedules schedule, Rule... rules) {
            assertThat(breaches(problem.spending(limit, true), schedule))
                    .extracting(Breach::rule)
                    .containsExactly(rules);
        }

        @Test
        void packs_that_are_less_than_none_bring_nothing_in() {
            breaks(
                    10_499,
                    schedule().arrival("may", "2027-05-01", load("sand", "bed", 1), load("sand", "bed", -1)),
                    Rule.RUNS,
                    Rule.MONEY);
        }

        @Test
        void a_generator_that_takes_energy_brings_nothing_in() {
            breaks(
                    59,
                    schedule().generator("2027-05-01", 1_000).generator("2027-05-02", -1_000),
                    Rule.POWER,
                    Rule.MONEY);
        }

        @Test
        void a_wrong_name_does_not_hide_what_a_trip_costs() {
            breaks(9_999, schedule().arrival("july", "2027-05-01"), Rule.RUNS, Rule.MONEY);
        }

        @Test
        void a_wrong_date_does_not_hide_what_a_trip_costs() {
            breaks(9_999, schedule().arrival("may", "2027-05-20"), Rule.RUNS, Rule.MONEY);
        }

        @Test
        void a_block_of_no_labour_does_not_hide_what_a_trip_costs() {
            breaks(9_999, schedule().block("moat", "2027-05-01", 0), Rule.LABOUR, Rule.MONEY);
        }

        @Test
        void a_run_too_many_is_paid_for() {
            breaks(
                    15_999,
                    schedule()
                            .extra("may", "2027-05-01")
                            .extra("may", "2027-05-01")
                            .extra("may", "2027-05-01"),
                    Rule.RUNS,
                    Rule.MONEY);
        }

        @Test
        void an_arrival_run_that_names_an_offer_pays_no_fee() {
            Run run = new Run("may", LocalDate.parse("2027-05-01"), RunKind.ARRIVAL, "quarry", List.of());
            breaks(10_000, schedule().run(run), Rule.RUNS);
        }

        @Test
        void what_nobody_knows_has_no_price() {
            breaks(
                    10_000,
                    schedule().delivery("may", "2027-05-02", "baker", load("bread", TRUCK, 9)),
                    Rule.RUNS,
                    Rule.RUNS);
        }

        @Test
        void a_date_at_the_end_of_all_time_has_its_month() {
            breaks(
                    0,
                    schedule()
                            .run(new Run("july", LocalDate.MAX, RunKind.ARRIVAL, "", List.of(load("sand", "bed", 1)))),
                    Rule.RUNS,
                    Rule.MONEY);
        }
    }

    @Nested
    class GreatSums {
        @Test
        void of_fees_do_not_wrap_round() {
            problem.offer(quarry("dear", Long.MAX_VALUE)).offer(quarry("dearer", Long.MAX_VALUE));
            breaksOnly(
                    Rule.MONEY,
                    problem.spending(Long.MAX_VALUE, true),
                    schedule().delivery("may", "2027-05-02", "dear").delivery("may", "2027-05-02", "dearer"),
                    "deliveries 18446744073709551614");
        }

        @Test
        void of_packs_do_not_wrap_round() {
            problem.material("gold", m -> m.cents(Long.MAX_VALUE));
            breaksOnly(
                    Rule.MONEY,
                    problem.spending(Long.MAX_VALUE, true),
                    schedule().arrival("may", "2027-05-01", load("gold", "bed", 2)),
                    "materials 18446744073709551614");
        }

        @Test
        void of_fuel_do_not_wrap_round() {
            problem.generator(PowerSupply.MOST);
            Schedules schedule =
                    schedule().generator("2027-05-01", PowerSupply.MOST).generator("2027-05-02", PowerSupply.MOST);
            breaksOnly(Rule.MONEY, problem.spending(1_000_000, true), schedule, "2027-05", "fuel");
        }

        @Test
        void may_be_as_great_as_the_limit() {
            problem.offer(quarry("dear", Long.MAX_VALUE - 10_000));
            keepsEveryRule(problem.spending(Long.MAX_VALUE, true), schedule().delivery("may", "2027-05-02", "dear"));
        }
    }
}
