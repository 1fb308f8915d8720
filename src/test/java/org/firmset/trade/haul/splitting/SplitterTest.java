package org.firmset.trade.haul.splitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.takeoff.cutting.BinPacking;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SplitterTest {
    private static final Cargo SACKS = new Cargo("sack", 25_000, 15_000, 600, 60, 1);

    @AfterEach
    void haveTheSolverAgain() {
        SolverLibrary.want(true);
    }

    private static Cargo bag(String kind, int count, int order) {
        return new Cargo(kind, 36_000, 22_000, 600, count, order);
    }

    @Test
    void a_load_under_the_payload_is_one_run() {
        // by hand: 36 sacks of 25 kg are 900 kg, what the van takes
        Split split = Splitter.split(Rigs.VAN, List.of(SACKS.withCount(36)));
        assertThat(split.runs()).containsExactly(new RunLoad(List.of(new Placed("sack", "bed", 36))));
        assertThat(split.proven()).isTrue();
    }

    @Test
    void one_sack_more_is_two() {
        Split split = Splitter.split(Rigs.VAN, List.of(SACKS.withCount(37)));
        assertThat(split.runs()).hasSize(2);
        assertThat(split.least()).isEqualTo(2);
    }

    @Test
    void nothing_is_no_run() {
        assertThat(Splitter.split(Rigs.VAN, List.of())).isEqualTo(new Split(List.of(), 0, List.of(), true));
    }

    @Test
    void both_bays_are_loaded_up_to_their_limits_together() {
        // by hand: deck 1,000 kg puts 120 on the vehicle, so the bed takes 380: 40 sacks and 15
        Split split = Splitter.split(Rigs.WITH_TRAILER, List.of(SACKS.withCount(55)));
        assertThat(split.runs()).hasSize(1);
        assertThat(split.runs().getFirst().placed())
                .containsExactlyInAnyOrder(new Placed("sack", "bed", 15), new Placed("sack", "deck", 40));
        assertThat(Splitter.split(Rigs.WITH_TRAILER, List.of(SACKS.withCount(56)))
                        .least())
                .isEqualTo(2);
    }

    @Test
    void long_pieces_lie_on_the_trailer_and_count_for_it() {
        // by hand: 1,000 kg of trailer take 20 of 50 kg, though the bed stays empty
        Split split = Splitter.split(Rigs.WITH_TRAILER, List.of(new Cargo("beam", 50_000, 1_000, 6_000, 21, 1)));
        assertThat(split.least()).isEqualTo(2);
        assertThat(split.runs())
                .allSatisfy(
                        run -> assertThat(run.placed()).extracting(Placed::bay).containsOnly("deck"));
    }

    @Test
    void a_mass_behind_an_axle_makes_room_before_it() {
        // by hand: 10 % of four stoves are 20 kg on an axle that takes 10; the pipes on the tail lift 10 of them
        Rig rig = new Rig(
                "r",
                "R",
                List.of(new Bay("bed", "Bed", 1_000_000, 1_000), new Bay("tail", "Tail", 1_000, 5_000)),
                List.of(
                        new MassLimit("front axle", 10_000, Map.of("bed", 100, "tail", -200)),
                        new MassLimit("tail", 50_000, Map.of("tail", 1000))));
        List<Cargo> bed = List.of(new Cargo("stove", 50_000, 250_000, 900, 4, 1));
        List<Cargo> both = List.of(bed.getFirst(), new Cargo("pipe", 50_000, 10, 5_000, 1, 1));
        assertThat(Splitter.split(rig, bed).least()).isEqualTo(2);
        assertThat(Splitter.split(rig, both).runs()).hasSize(1);
    }

    @Test
    void falkenauers_first_instance_takes_48_bins_as_published() {
        Rig rig = new Rig(
                "bin",
                "Bin",
                List.of(new Bay("bin", "Bin", 0, 0)),
                List.of(new MassLimit("capacity", BinPacking.BIN, Map.of("bin", 1000))));
        List<Cargo> cargo = new ArrayList<>();
        BinPacking.demands().forEach(d -> cargo.add(new Cargo("" + d.length(), d.length(), 0, 0, d.count(), 0)));
        Split split = Splitter.split(rig, cargo);
        assertThat(split.runs()).hasSize(48);
        assertThat(split.proven()).isTrue();
        assertThat(new Judge(rig, cargo).complaints(split.runs())).isEmpty();
    }

    @Test
    void without_the_solver_it_splits_all_the_same_and_says_so() {
        SolverLibrary.want(false);
        Split split = Splitter.split(Rigs.WITH_TRAILER, List.of(SACKS, bag("bag", 30, 0)));
        assertThat(split.withSolver()).isFalse();
        // by hand: 1,500 + 1,080 kg against 1,380 kg a run
        assertThat(split.runs()).hasSize(2);
        assertThat(split.least()).isEqualTo(2);
    }

    @Nested
    class NeededFirst {
        @Test
        void comes_with_the_first_run() {
            List<Cargo> cargo = List.of(bag("later", 25, 7), bag("first", 20, 1), bag("middle", 10, 3));
            Split split = Splitter.split(Rigs.VAN, cargo);
            // by hand: 25 bags of 36 kg are 900 kg
            assertThat(split.runs()).hasSize(3);
            assertThat(split.runs().get(0).packs("first")).isEqualTo(20);
            assertThat(split.runs().get(0).packs("middle")).isEqualTo(5);
            assertThat(split.runs().get(1).packs("middle")).isEqualTo(5);
            assertThat(split.runs().get(1).packs("later")).isEqualTo(20);
        }

        @Test
        void never_costs_a_run() {
            // by hand: 60 + 40 and 70 + 30 fill two runs of 100; the two of order 1 together, 60 + 30, would take three
            List<Cargo> cargo = List.of(
                    new Cargo("a", 60, 1, 1, 1, 1),
                    new Cargo("b", 30, 1, 1, 1, 1),
                    new Cargo("c", 70, 1, 1, 1, 2),
                    new Cargo("d", 40, 1, 1, 1, 2));
            Split split = Splitter.split(Rigs.van(100), cargo);
            assertThat(split.runs()).hasSize(2);
            assertThat(split.runs().getFirst().packs("c"))
                    .isNotEqualTo(split.runs().getFirst().packs("a"));
        }

        @Test
        void the_same_kind_needed_twice_is_handed_out_in_order() {
            List<Cargo> cargo = List.of(bag("bag", 20, 5), bag("other", 20, 3), bag("bag", 5, 1));
            Split split = Splitter.split(Rigs.VAN, cargo);
            assertThat(split.runs().getFirst().packs("other")).isEqualTo(20);
            assertThat(split.runs().getFirst().packs("bag")).isEqualTo(5);
        }
    }

    @Nested
    class Unfitting {
        @Test
        void a_piece_longer_than_every_bay_is_told_with_what_the_longest_takes() {
            Cargo pole = new Cargo("pole", 10_000, 1_000, 7_000, 2, 1);
            Split split = Splitter.split(Rigs.WITH_TRAILER, List.of(pole, SACKS.withCount(1)));
            assertThat(split.unfit()).containsExactly(new Unfit(pole, Unfit.Why.TOO_LONG, 6_000));
            assertThat(split.runs()).hasSize(1);
        }

        @Test
        void a_tank_larger_than_the_bays_that_are_long_enough_is_too_large() {
            Cargo tank = new Cargo("tank", 10_000, 5_000_000, 2_000, 1, 1);
            assertThat(Splitter.split(Rigs.VAN, List.of(tank)).unfit())
                    .containsExactly(new Unfit(tank, Unfit.Why.TOO_LARGE, 4_000_000));
        }

        @Test
        void a_stone_over_the_limits_is_too_heavy() {
            Cargo stone = new Cargo("stone", 1_000_001, 1_000, 500, 1, 1);
            assertThat(Splitter.fill(Rigs.WITH_TRAILER, List.of(stone), 1).unfit())
                    .containsExactly(new Unfit(stone, Unfit.Why.TOO_HEAVY, 1_000_000));
        }
    }

    @Nested
    class Filling {
        @Test
        void takes_what_is_needed_first_and_leaves_the_rest() {
            Filled filled = Splitter.fill(Rigs.VAN, List.of(bag("later", 25, 7), bag("first", 20, 1)), 1);
            assertThat(Judge.packs(filled.runs())).isEqualTo(Map.of("first", 20, "later", 5));
            assertThat(filled.left()).containsExactly(bag("later", 20, 7));
        }

        @Test
        void stows_anew_what_lies_in_the_way() {
            // the sacks come first and would fill the deck; the beams go only there
            Filled filled = Splitter.fill(
                    Rigs.WITH_TRAILER, List.of(SACKS.withCount(30), new Cargo("beam", 50_000, 1_000, 6_000, 12, 2)), 1);
            assertThat(filled.left()).isEmpty();
        }

        @Test
        void no_runs_leave_all() {
            assertThat(Splitter.fill(Rigs.VAN, List.of(SACKS), 0).left()).containsExactly(SACKS);
        }
    }

    @Nested
    class Again {
        @Test
        void what_was_split_stays_where_it_was() {
            List<Cargo> cargo = List.of(bag("later", 25, 7), bag("first", 20, 1), bag("middle", 10, 3));
            Split before = Splitter.split(Rigs.VAN, cargo);
            assertThat(Splitter.again(before, Rigs.VAN, cargo)).isEqualTo(before);
        }

        @Test
        void without_the_trailer_it_takes_more_runs() {
            List<Cargo> cargo = List.of(SACKS.withCount(55));
            Split before = Splitter.split(Rigs.WITH_TRAILER, cargo);
            assertThat(Splitter.again(before, Rigs.van(500_000), cargo).runs()).hasSize(3);
        }
    }

    @Test
    void amounts_beyond_all_bounds_are_a_programmers_mistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SACKS.withCount(0))
                .withMessageContaining("[0]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Cargo("x", -1, 0, 0, 1, 0))
                .withMessageContaining("[-1]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Splitter.split(Rigs.VAN, List.of(bag("a", Cargo.MOST_PACKS, 0), bag("b", 1, 0))))
                .withMessageContaining("100001");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Splitter.fill(Rigs.VAN, List.of(), -1))
                .withMessageContaining("[-1]");
    }

    @Test
    void the_most_packs_of_all_are_split_without_end_of_patience() {
        List<Cargo> cargo = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            cargo.add(new Cargo("kind " + i, 200_000 + 100 * i, 1_000, 10, 250, i % 7));
        }
        Split split = assertTimeout(Duration.ofMinutes(1), () -> Splitter.split(Rigs.WITH_TRAILER, cargo));
        assertThat(new Judge(Rigs.WITH_TRAILER, cargo).complaints(split.runs())).isEmpty();
        assertThat(Judge.packs(split.runs())).isEqualTo(Judge.wanted(cargo));
    }
}
