package org.firmset.trade.takeoff.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class FillingTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);

    /** A knapsack small enough to try everything. */
    private static final class Sack {
        final long[] sizes;
        final int[] most;
        final double[] values;
        final long capacity;

        Sack(long[] sizes, int[] most, double[] values, long capacity) {
            this.sizes = sizes;
            this.most = most;
            this.values = values;
            this.capacity = capacity;
        }

        static Sack any(SplittableRandom random) {
            int kinds = random.nextInt(1, 5);
            long[] sizes = random.longs(kinds, 1, 9).toArray();
            int[] most = random.ints(kinds, 0, 4).toArray();
            double[] values = random.ints(kinds, 0, 9).asDoubleStream().toArray();
            return new Sack(sizes, most, values, random.nextInt(1, 20));
        }

        Filling filling() {
            return new Filling(sizes, most, values, capacity);
        }

        long size(int[] counts) {
            return IntStream.range(0, sizes.length)
                    .mapToLong(i -> counts[i] * sizes[i])
                    .sum();
        }

        double value(int[] counts) {
            return IntStream.range(0, sizes.length)
                    .mapToDouble(i -> counts[i] * values[i])
                    .sum();
        }

        boolean isFull(int[] counts) {
            long left = capacity - size(counts);
            return IntStream.range(0, sizes.length).noneMatch(i -> counts[i] < most[i] && sizes[i] <= left);
        }

        /** Every way to fill it. */
        List<int[]> all() {
            List<int[]> all = new ArrayList<>();
            gather(new int[sizes.length], 0, all);
            return all;
        }

        private void gather(int[] counts, int kind, List<int[]> all) {
            if (kind == sizes.length) {
                if (size(counts) <= capacity) {
                    all.add(counts.clone());
                }
                return;
            }
            for (int n = 0; n <= most[kind]; n++) {
                counts[kind] = n;
                gather(counts, kind + 1, all);
            }
            counts[kind] = 0;
        }

        String told(int trial) {
            return "seed " + SEED + ", trial " + trial + ": sizes " + Arrays.toString(sizes) + ", most "
                    + Arrays.toString(most) + ", values " + Arrays.toString(values) + ", capacity " + capacity;
        }
    }

    private static List<String> texts(List<int[]> fillings) {
        return fillings.stream().map(Arrays::toString).toList();
    }

    @Test
    void the_most_valuable_filling_is_that_of_trying_everything() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int trial = 0; trial < 500; trial++) {
            Sack sack = Sack.any(random);
            Filling filling = sack.filling();
            int[] best = filling.best();
            double most = sack.all().stream().mapToDouble(sack::value).max().orElseThrow();
            assertThat(sack.size(best)).as(sack.told(trial)).isLessThanOrEqualTo(sack.capacity);
            assertThat(sack.value(best)).as(sack.told(trial)).isCloseTo(most, within(1e-9));
            assertThat(filling.bestValue()).as(sack.told(trial)).isCloseTo(most, within(1e-9));
            assertThat(filling.complete()).isTrue();
        }
    }

    @Test
    void fillings_worth_enough_are_all_the_full_ones() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int trial = 0; trial < 500; trial++) {
            Sack sack = Sack.any(random);
            int least = random.nextInt(0, 12);
            List<String> expected = texts(sack.all().stream()
                    .filter(sack::isFull)
                    .filter(counts -> sack.value(counts) >= least)
                    .toList());
            String what = sack.told(trial) + ", least " + least;
            assertThat(texts(sack.filling().worth(least, 1000).orElseThrow()))
                    .as(what)
                    .containsExactlyInAnyOrderElementsOf(expected);
            assertThat(sack.filling().worth(least, expected.size())).as(what).isPresent();
            if (!expected.isEmpty()) {
                assertThat(sack.filling().worth(least, expected.size() - 1))
                        .as(what)
                        .isEmpty();
            }
        }
    }

    @Test
    void a_search_that_takes_too_long_is_cut_short_and_says_so() {
        // even pieces never fill an odd bar, so nothing can be ruled out
        long[] sizes = LongStream.range(0, 24).map(i -> 1000 + 34 * i).toArray();
        int[] most = IntStream.range(0, 24).map(i -> 20).toArray();
        double[] values = Arrays.stream(sizes).asDoubleStream().toArray();
        Filling filling = new Filling(sizes, most, values, 20_001);
        assertThat(filling.best()).isNotEqualTo(new int[24]);
        assertThat(filling.complete()).isFalse();
        assertThat(new Filling(sizes, most, values, 20_001).worth(0, Integer.MAX_VALUE - 1))
                .isEmpty();
    }
}
