package org.firmset.plan.check;

import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaksOnly;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import org.firmset.plan.Load;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Dry storage has room for 100 l: five bags of 20 l. */
class DryStorageTest {
    private final Problems problem = problem()
            .dryStorage(100_000)
            .trip("may", "2027-05-01", 2)
            .trip("june", "2027-06-05", 2)
            .material("cement", m -> m.dry().shelfLife(10))
            .material("plaster", m -> m.dry())
            .material("gravel");

    private static final String MAY = "2027-05-01";

    private static Load cement(int packs) {
        return load("cement", "bed", packs);
    }

    @Test
    void dry_packs_may_fill_the_storage_beside_what_need_not_be_dry() {
        keepsEveryRule(
                problem,
                schedule().arrival("may", MAY, cement(3), load("plaster", "bed", 2), load("gravel", "bed", 10)));
    }

    @Test
    void packs_used_on_the_day_they_arrive_need_no_storage() {
        problem.stage("slab", 8, s -> s.needs("cement", 4));
        keepsEveryRule(problem, schedule().arrival("may", MAY, cement(9)).block("slab", MAY, 8));
    }

    @Test
    void storage_is_looked_at_only_when_something_dry_arrives() {
        problem.stock("cement", 9, "2027-04-30").stage("slab", 8);
        keepsEveryRule(
                problem,
                schedule().arrival("may", MAY, load("gravel", "bed", 1)).block("slab", "2027-05-02", 8));
    }

    @Test
    void stock_that_came_today_is_no_arrival_of_the_plan() {
        problem.stock("cement", 9, MAY).stage("slab", 8);
        keepsEveryRule(problem, schedule().block("slab", MAY, 8));
    }

    @Nested
    class Refuses {
        @Test
        void more_dry_packs_than_there_is_room_for() {
            breaksOnly(
                    Rule.SUPPLIES,
                    problem,
                    schedule().arrival("may", MAY, cement(4), load("plaster", "bed", 2)),
                    MAY,
                    "120000 ml",
                    "100000 ml");
        }

        @Test
        void packs_that_are_used_only_on_the_next_day() {
            problem.stage("slab", 8, s -> s.needs("cement", 6));
            breaksOnly(
                    Rule.SUPPLIES,
                    problem,
                    schedule().arrival("may", MAY, cement(6)).block("slab", "2027-05-02", 8),
                    "end of 2027-05-01",
                    "120000 ml");
        }

        @Test
        void one_pack_more_on_top_of_the_stock() {
            problem.stock("cement", 5, "2027-04-30");
            breaksOnly(
                    Rule.SUPPLIES,
                    problem,
                    schedule().arrival("may", MAY, load("plaster", "bed", 1)),
                    MAY,
                    "120000 ml");
        }

        @Test
        void packs_that_find_the_room_taken_by_others_that_have_gone_off() {
            problem.stock("cement", 4, "2027-03-01").stage("slab", 8, s -> s.needs("cement", 1));
            breaksOnly(
                    Rule.SUPPLIES,
                    problem,
                    schedule().arrival("june", "2027-06-05", cement(3)).block("slab", "2027-06-05", 8),
                    "2027-06-05",
                    "120000 ml");
        }

        @Test
        void packs_left_over_from_an_earlier_trip() {
            breaksOnly(
                    Rule.SUPPLIES,
                    problem,
                    schedule().arrival("may", MAY, load("plaster", "bed", 4)).arrival("june", "2027-06-05", cement(2)),
                    "2027-06-05",
                    "120000 ml");
        }
    }
}
