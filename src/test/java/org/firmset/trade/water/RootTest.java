package org.firmset.trade.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RootTest {
    private static final long SEED = Long.getLong("firmset.seed", 2027);

    @Test
    void powers_are_undone() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 1000; i++) {
            double power = random.nextDouble(1, 4);
            double root = random.nextDouble(0.01, 10);
            double high = root + random.nextDouble(0, 20);
            double found = Root.of(x -> Math.pow(x, power) - Math.pow(root, power), 0, high);
            assertThat(found)
                    .as("seed %d, power %s, root %s, high %s", SEED, power, root, high)
                    .isCloseTo(root, within(1e-9));
        }
    }

    @Test
    void a_root_on_either_side_of_the_middle_is_found() {
        assertThat(Root.of(x -> x - 0.1, 0, 1)).isCloseTo(0.1, within(1e-12));
        assertThat(Root.of(x -> x - 0.5, 0, 1)).isEqualTo(0.5);
        assertThat(Root.of(x -> x * x * x - 0.729, 0, 1)).isCloseTo(0.9, within(1e-12));
        assertThat(Root.of(x -> Math.cbrt(x - 0.2), -3, 1)).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void a_function_that_is_nowhere_0_gives_the_end_nearest_to_it() {
        assertThat(Root.of(x -> x + 1, 0, 5)).isZero();
        assertThat(Root.of(x -> x - 9, 0, 5)).isEqualTo(5);
        assertThat(Root.of(x -> x, 0, 5)).isZero();
        assertThat(Root.of(x -> x - 5, 0, 5)).isEqualTo(5);
    }

    @Test
    void few_looks_are_enough() {
        AtomicInteger looks = new AtomicInteger();
        Root.of(
                x -> {
                    looks.incrementAndGet();
                    return Math.pow(x, 1.852) - 3;
                },
                0,
                20);
        assertThat(looks).hasValueLessThan(30);
    }
}
