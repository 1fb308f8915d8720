package org.firmset.trade.haul.splitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.takeoff.cutting.SolverLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Random rigs and cargo; what is expected is worked out here and in {@link Judge} and {@link LeastBySearch} alone. */
class SplitterPropertiesTest {
    private static final int CASES = 1_000;
    private static final int FEWER_CASES = 300;
    private static final long SEED = Long.getLong("firmset.seed", 1);

    @AfterEach
    void haveTheSolverAgain() {
        SolverLibrary.want(true);
    }

    private record Case(Rig rig, List<Cargo> cargo) {
        static Case of(SplittableRandom random, int mostLines, int mostPacks) {
            int bays = 1 + random.nextInt(3);
            List<Bay> all = new ArrayList<>();
            for (int b = 0; b < bays; b++) {
                all.add(new Bay("bay " + b, "Bay", random.nextInt(40), 5 + random.nextInt(10)));
            }
            List<MassLimit> limits = new ArrayList<>();
            for (int l = random.nextInt(4); l >= 0; l--) {
                Map<String, Integer> shares = new HashMap<>();
                all.forEach(bay -> shares.put(bay.id(), 100 * (random.nextInt(14) - 2)));
                limits.add(new MassLimit("limit " + l, 10 + random.nextInt(40), shares));
            }
            List<Cargo> cargo = new ArrayList<>();
            int left = mostPacks;
            for (int i = 1 + random.nextInt(mostLines); i > 0 && left > 0; i--) {
                int count = 1 + random.nextInt(Math.min(4, left));
                left -= count;
                cargo.add(new Cargo(
                        "kind " + i,
                        random.nextInt(25),
                        random.nextInt(20),
                        random.nextInt(13),
                        count,
                        random.nextInt(4)));
            }
            return new Case(new Rig("rig", "Rig", all, limits), cargo);
        }

        private boolean goesAlone(Cargo line) {
            return rig.bays().stream()
                    .anyMatch(bay -> new Judge(rig, cargo)
                            .complaints(new RunLoad(List.of(new Placed(line.kind(), bay.id(), 1))))
                            .isEmpty());
        }

        List<Cargo> fitting() {
            return cargo.stream().filter(this::goesAlone).toList();
        }
    }

    private static String told(Case c, int number) {
        return "-Dfirmset.seed=" + SEED + ", case " + number + ": " + c;
    }

    private static void holds(Case c, Split split, String told) {
        assertThat(new Judge(c.rig(), c.cargo()).complaints(split.runs()))
                .as(told)
                .isEmpty();
        assertThat(Judge.packs(split.runs())).as(told).isEqualTo(Judge.wanted(c.fitting()));
        assertThat(split.least()).as(told).isLessThanOrEqualTo(split.runs().size());
        assertThat(split.unfit().stream().map(Unfit::cargo))
                .as(told)
                .containsExactlyElementsOf(
                        c.cargo().stream().filter(l -> !c.goesAlone(l)).toList());
        assertThat(split.runs()).as(told).noneMatch(run -> run.placed().isEmpty());
    }

    @Test
    void every_split_carries_every_pack_once_within_every_limit() {
        for (int i = 0; i < CASES; i++) {
            Case c = Case.of(new SplittableRandom(SEED * 1_000_003 + i), 6, 20);
            Split split = Splitter.split(c.rig(), c.cargo());
            holds(c, split, told(c, i));
            if (i % 10 == 0) {
                assertThat(Splitter.split(c.rig(), c.cargo())).as(told(c, i)).isEqualTo(split);
            }
        }
    }

    @Test
    void so_does_a_split_made_again_after_a_change_or_without_the_solver() {
        for (int i = 0; i < FEWER_CASES; i++) {
            SplittableRandom random = new SplittableRandom(SEED * 1_000_003 + i);
            Case c = Case.of(random, 6, 20);
            Case other = Case.of(random, 6, 20);
            SolverLibrary.want(i % 2 == 0);
            Split split = Splitter.split(c.rig(), c.cargo());
            holds(c, split, told(c, i));
            assertThat(split.withSolver()).isEqualTo(i % 2 == 0);
            holds(other, Splitter.again(split, other.rig(), other.cargo()), told(other, i));
        }
    }

    @Test
    void in_tiny_cases_the_least_is_what_trying_everything_finds() {
        int proven = 0;
        for (int i = 0; i < FEWER_CASES; i++) {
            Case c = Case.of(new SplittableRandom(SEED * 7_000_003 + i), 4, 5);
            int least = new LeastBySearch(c.rig(), c.fitting()).runs();
            Split split = Splitter.split(c.rig(), c.cargo());
            assertThat(split.runs()).as(told(c, i)).hasSize(least);
            assertThat(split.proven()).as(told(c, i)).isTrue();
            SolverLibrary.want(false);
            Split plain = Splitter.split(c.rig(), c.cargo());
            SolverLibrary.want(true);
            assertThat(plain.least()).as(told(c, i)).isLessThanOrEqualTo(least);
            proven += plain.proven() ? 1 : 0;
        }
        assertThat(proven).as("proven by simple bounds alone").isGreaterThan(FEWER_CASES / 2);
    }

    @Test
    void filled_runs_keep_every_limit_and_tell_all_that_stays() {
        for (int i = 0; i < FEWER_CASES; i++) {
            SplittableRandom random = new SplittableRandom(SEED * 3_000_017 + i);
            Case c = Case.of(random, 6, 20);
            int runs = random.nextInt(3);
            Filled filled = Splitter.fill(c.rig(), c.cargo(), runs);
            assertThat(new Judge(c.rig(), c.cargo()).complaints(filled.runs()))
                    .as(told(c, i))
                    .isEmpty();
            assertThat(filled.runs().size()).as(told(c, i)).isLessThanOrEqualTo(runs);
            List<Cargo> rest = Stream.concat(
                            filled.left().stream(), filled.unfit().stream().map(Unfit::cargo))
                    .toList();
            Map<String, Integer> all = Judge.packs(filled.runs());
            Judge.wanted(rest).forEach((kind, count) -> all.merge(kind, count, Integer::sum));
            assertThat(all).as(told(c, i)).isEqualTo(Judge.wanted(c.cargo()));
        }
    }

    @Test
    void what_is_needed_first_is_left_only_when_it_cannot_go_along_with_what_is_needed_as_early() {
        for (int i = 0; i < FEWER_CASES; i++) {
            Case c = Case.of(new SplittableRandom(SEED * 5_000_011 + i), 4, 5);
            Filled filled = Splitter.fill(c.rig(), c.cargo(), 1);
            for (Cargo left : filled.left()) {
                List<Cargo> asEarly = c.fitting().stream()
                        .filter(l -> l.order() < left.order() || l.kind().equals(left.kind()))
                        .map(l -> l.kind().equals(left.kind())
                                ? l.withCount(l.count() - left.count() + 1)
                                : l.withCount(l.count()))
                        .toList();
                boolean earlierAllIn = filled.left().stream().noneMatch(l -> l.order() < left.order());
                boolean alone = c.fitting().stream()
                        .noneMatch(l -> l.order() == left.order() && !l.kind().equals(left.kind()));
                if (earlierAllIn && alone) {
                    assertThat(new LeastBySearch(c.rig(), asEarly).runs())
                            .as(told(c, i))
                            .isGreaterThan(1);
                }
            }
        }
    }
}
