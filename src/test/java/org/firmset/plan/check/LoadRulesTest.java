package org.firmset.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.firmset.plan.Problems.problem;
import static org.firmset.plan.Schedules.load;
import static org.firmset.plan.Schedules.schedule;
import static org.firmset.plan.check.Verdicts.breaches;
import static org.firmset.plan.check.Verdicts.keepsEveryRule;

import java.util.List;
import java.util.Map;
import org.firmset.plan.Load;
import org.firmset.plan.Problems;
import org.firmset.plan.Rule;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LoadRulesTest {
    /** Bed 400 l and 2400 mm, deck 900 l and 5000 mm; the tongue puts 120 of each 1000 g on the vehicle. */
    private static final Rig TOWING = new Rig(
            "towing",
            "Pickup and trailer",
            List.of(new Bay("bed", "Bed", 400_000, 2_400), new Bay("deck", "Deck", 900_000, 5_000)),
            List.of(
                    new MassLimit("Payload", 300_000, Map.of("bed", 1000, "deck", 120)),
                    new MassLimit("Trailer rating", 750_000, Map.of("deck", 1000))));

    private final Problems problem = problem()
            .trip("may", "2027-05-01", 2, t -> t.rig(TOWING).extraRuns(1, 0))
            .material("cement", m -> m.grams(25_000).millilitres(20_000))
            .material("purlin", m -> m.grams(1_000).millilitres(10_000).millimetres(5_000))
            .material("foam", m -> m.grams(0).millilitres(100_000));

    private void arrivesWith(Load... loads) {
        keepsEveryRule(problem, schedule().arrival("may", "2027-05-01", loads));
    }

    @Test
    void a_piece_may_be_as_long_as_its_bay() {
        arrivesWith(load("purlin", "deck", 1));
    }

    @Test
    void loads_may_fill_a_bay() {
        arrivesWith(load("foam", "bed", 1), load("foam", "bed", 3));
    }

    @Test
    void loads_may_weigh_as_much_as_the_trailer_is_rated_for() {
        arrivesWith(load("cement", "deck", 30));
    }

    @Test
    void payload_takes_the_bed_and_the_tongues_share_of_the_deck() {
        arrivesWith(load("cement", "bed", 9), load("cement", "deck", 25));
    }

    @Test
    void each_run_has_the_rig_to_itself() {
        keepsEveryRule(
                problem,
                schedule()
                        .arrival("may", "2027-05-01", load("cement", "bed", 12))
                        .extra("may", "2027-05-01", load("cement", "bed", 12)));
    }

    @Nested
    class Refuses {
        private void breaksOnlyRuns(List<Load> loads, String... words) {
            Verdicts.breaksOnly(
                    Rule.RUNS, problem, schedule().arrival("may", "2027-05-01", loads.toArray(Load[]::new)), words);
        }

        @Test
        void a_piece_longer_than_its_bay() {
            breaksOnlyRuns(
                    List.of(load("purlin", "bed", 1)),
                    "arrival run of trip [may] on 2027-05-01",
                    "[Purlin]",
                    "5000 mm",
                    "[Bed]",
                    "2400 mm");
        }

        @Test
        void loads_that_together_take_more_room_than_their_bay_has() {
            breaksOnlyRuns(
                    List.of(load("foam", "bed", 3), load("foam", "bed", 2)),
                    "[may]",
                    "500000 ml",
                    "[Bed]",
                    "400000 ml");
        }

        @Test
        void one_pack_over_the_rating_of_the_trailer() {
            breaksOnlyRuns(List.of(load("cement", "deck", 31)), "[may]", "775000 g", "[Trailer rating]", "750000 g");
        }

        @Test
        void a_bed_that_is_too_heavy_only_with_the_tongues_share_of_the_deck() {
            breaksOnlyRuns(
                    List.of(load("cement", "bed", 9), load("cement", "deck", 26)),
                    "[may]",
                    "303000 g",
                    "[Payload]",
                    "300000 g");
        }

        @Test
        void a_tongue_share_that_is_over_by_less_than_a_gram() {
            problem.material("ballast", m -> m.grams(1)).material("sand", m -> m.grams(299_999));
            breaksOnlyRuns(
                    List.of(load("sand", "bed", 1), load("ballast", "deck", 9)), "300001 g", "[Payload]", "300000 g");
        }

        @Test
        void an_extra_run_that_is_too_heavy() {
            Verdicts.breaksOnly(
                    Rule.RUNS,
                    problem,
                    schedule().extra("may", "2027-05-01", load("cement", "bed", 13)),
                    "extra run of trip [may]",
                    "325000 g",
                    "[Payload]");
        }

        @Test
        void a_bay_the_rig_does_not_have() {
            breaksOnlyRuns(List.of(load("cement", "roof", 1)), "1 packs", "[cement]", "[roof]", "[Pickup and trailer]");
        }

        @Test
        void a_material_nobody_knows() {
            breaksOnlyRuns(List.of(load("marble", "bed", 1)), "[may]", "2027-05-01", "[marble]", "not known");
        }

        @Test
        void a_load_of_no_packs() {
            breaksOnlyRuns(List.of(load("cement", "bed", 0)), "[may]", "0 packs", "[cement]");
        }

        @Test
        void a_negative_load_and_the_mass_it_would_make_room_for() {
            assertThat(breaches(
                            problem,
                            schedule()
                                    .arrival(
                                            "may", "2027-05-01", load("cement", "bed", 13), load("cement", "bed", -1))))
                    .satisfiesExactly(
                            negative -> assertThat(negative.message()).contains("-1 packs"),
                            tooHeavy -> assertThat(tooHeavy.message()).contains("325000 g"));
        }

        @Test
        void a_mass_that_would_wrap_round() {
            problem.material("anvil", m -> m.grams(Long.MAX_VALUE).millilitres(0));
            breaksOnlyRuns(List.of(load("anvil", "bed", 2)), "18446744073709551614 g", "[Payload]");
        }
    }
}
