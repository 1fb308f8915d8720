package org.firmset.plan.check;

import static java.time.DayOfWeek.SUNDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Load.TRUCK;
import static org.firmset.plan.Problems.STATUS_DATE;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.util.Set;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.plan.Schedules;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SupplyRulesTest {
    private final Problems problem =
            problem().trip("may", "2027-05-01", 3, t -> t.extraRuns(1, 0)).trip("june", "2027-06-05", 2);

    /** Slab: 8 quarter-hours and 3 packs of cement, which is as the test says. */
    private Problems slabOfCement() {
        return problem.material("cement").stage("slab", 8, s -> s.needs("cement", 3));
    }

    private Problems slabOfCementGoodFor(int days) {
        return problem.material("cement", m -> m.shelfLife(days)).stage("slab", 8, s -> s.needs("cement", 3));
    }

    private static Schedules arrival(int packs) {
        return schedule().arrival("may", "2027-05-01", load("cement", "bed", packs));
    }

    @Test
    void what_arrives_may_be_used_on_the_same_date() {
        keepsEveryRule(slabOfCement(), arrival(3).block("slab", "2027-05-01", 8));
    }

    @Test
    void an_extra_run_a_delivery_and_the_stock_on_site_count_too() {
        slabOfCement()
                .stock("cement", 1, "2027-04-03")
                .offer(new DeliveryOffer("yard", "Yard", Set.of("cement"), 50_000, STATUS_DATE, Set.of(SUNDAY), 0));
        keepsEveryRule(
                problem,
                schedule()
                        .extra("may", "2027-05-01", load("cement", "bed", 1))
                        .delivery("may", "2027-05-02", "yard", load("cement", TRUCK, 1))
                        .block("slab", "2027-05-02", 8));
    }

    @Test
    void a_pack_that_is_not_begun_need_not_be_there_yet() {
        keepsEveryRule(
                slabOfCement(),
                arrival(2)
                        .block("slab", "2027-05-01", 5)
                        .arrival("june", "2027-06-05", load("cement", "bed", 1))
                        .block("slab", "2027-06-05", 3));
    }

    @Test
    void only_the_labour_that_remains_uses_packs() {
        problem.material("cement")
                .stage("slab", 4, s -> s.startedOn("2027-04-03").needs("cement", 1));
        keepsEveryRule(problem, arrival(1).block("slab", "2027-05-01", 1).block("slab", "2027-05-02", 3));
    }

    @Test
    void a_pack_is_good_on_the_last_day_of_its_shelf_life() {
        keepsEveryRule(slabOfCementGoodFor(35), arrival(3).block("slab", "2027-06-05", 8));
    }

    @Test
    void the_oldest_good_pack_is_used_first() {
        problem.material("cement", m -> m.shelfLife(2)).stage("slab", 4, s -> s.needs("cement", 2));
        problem.stage("steps", 4, s -> s.needs("cement", 1)).stock("cement", 2, "2027-04-29");
        keepsEveryRule(problem, arrival(1).block("slab", "2027-05-01", 4).block("steps", "2027-05-03", 4));
    }

    @Test
    void what_is_left_of_an_older_lot_is_used_before_a_newer_one() {
        problem.material("cement", m -> m.shelfLife(2)).stage("slab", 4, s -> s.needs("cement", 2));
        problem.stage("steps", 4, s -> s.needs("cement", 1)).stock("cement", 2, "2027-04-30");
        keepsEveryRule(
                problem,
                arrival(1)
                        .block("slab", "2027-05-01", 2)
                        .block("slab", "2027-05-02", 2)
                        .block("steps", "2027-05-03", 4));
    }

    @Test
    void a_run_may_fetch_a_material_from_the_first_date_it_can_be_had() {
        problem.material("cement", m -> m.availableFrom("2027-05-01"));
        keepsEveryRule(problem, arrival(1));
    }

    @Nested
    class Refuses {
        private void breaksOnlySupplies(Schedules schedule, String... words) {
            Verdicts.breaksOnly(Rule.SUPPLIES, problem, schedule, words);
        }

        @Test
        void a_pack_too_few() {
            slabOfCement();
            breaksOnlySupplies(
                    arrival(2).block("slab", "2027-05-01", 8), "[Slab]", "3 packs", "[Cement]", "2027-05-01", "only 2");
        }

        @Test
        void a_pack_that_two_stages_want() {
            slabOfCement().stage("steps", 4, s -> s.needs("cement", 1));
            breaksOnlySupplies(
                    arrival(3).block("slab", "2027-05-01", 8).block("steps", "2027-05-02", 4),
                    "[Steps]",
                    "1 packs",
                    "2027-05-02",
                    "only 0");
        }

        @Test
        void use_before_the_date_on_which_stock_comes_by_itself() {
            slabOfCement().stock("cement", 3, "2027-05-02");
            breaksOnlySupplies(schedule().block("slab", "2027-05-01", 8), "[Cement]", "2027-05-01", "only 0");
            keepsEveryRule(problem, schedule().block("slab", "2027-05-02", 8));
        }

        @Test
        void use_the_day_before_the_run_arrives() {
            slabOfCement();
            breaksOnlySupplies(
                    schedule().block("slab", "2027-05-03", 8).arrival("june", "2027-06-05", load("cement", "bed", 3)),
                    "[Slab]",
                    "3 packs",
                    "2027-05-03",
                    "only 0");
        }

        @Test
        void a_pack_that_is_begun_before_it_is_there() {
            slabOfCement();
            breaksOnlySupplies(
                    arrival(2)
                            .block("slab", "2027-05-01", 6)
                            .arrival("june", "2027-06-05", load("cement", "bed", 1))
                            .block("slab", "2027-06-05", 2),
                    "[Slab] uses 3 packs",
                    "2027-05-01",
                    "only 2");
        }

        @Test
        void a_pack_one_day_after_its_shelf_life() {
            slabOfCementGoodFor(34);
            breaksOnlySupplies(
                    arrival(3).block("slab", "2027-06-05", 8),
                    "[Slab]",
                    "[Cement]",
                    "2027-06-05",
                    "only 0 good",
                    "3 have gone off");
        }

        @Test
        void stock_that_had_gone_off_before_the_status_date() {
            slabOfCementGoodFor(30).stock("cement", 3, "2027-03-31");
            breaksOnlySupplies(arrival(2).block("slab", "2027-05-01", 8), "3 packs", "only 2 good", "3 have gone off");
        }

        @Test
        void a_run_that_carries_what_cannot_be_had_yet() {
            problem.material("cement", m -> m.availableFrom("2027-05-02"));
            breaksOnlySupplies(
                    arrival(4), "arrival run of trip [may]", "4 packs", "[Cement]", "2027-05-01", "from 2027-05-02");
        }

        @Test
        void packs_that_arrive_as_a_negative_load() {
            slabOfCement();
            Schedules negative = arrival(-1).extra("may", "2027-05-01", load("cement", "bed", 2));
            assertThat(breaches(problem, negative.block("slab", "2027-05-01", 8)))
                    .satisfiesExactly(
                            load -> assertThat(load.message()).contains("-1 packs"),
                            use -> assertThat(use.message()).contains("uses 3 packs", "only 2 good"));
        }
    }
}
