package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Shared amounts add up to the smallest coin. */
class AllocationTest {
    @Test
    void a_fuel_bill_of_150_over_4000_6000_2000_lb_is_50_75_25_MN_05_pro_rata_common_practice() {
        assertThat(split("150", "4000", "6000", "2000")).containsExactly(usd("50"), usd("75"), usd("25"));
    }

    @Test
    void a_hundred_in_three_is_33_34_33_33_33_33_MN_05_largest_remainder_common_practice() {
        assertThat(split("100.00", "1", "1", "1")).containsExactly(usd("33.34"), usd("33.33"), usd("33.33"));
    }

    @Test
    void share_by_area_240_of_1200_ft2_is_20_percent_MN_03_IRS_Publication_587() {
        assertThat(split("100", "240", "960").getFirst()).isEqualTo(usd("20"));
    }

    @Test
    void share_by_use_12000_of_20000_miles_of_4800_is_2880_MN_04_IRS_Publication_463_from_memory() {
        assertThat(split("4800", "12000", "8000").getFirst()).isEqualTo(usd("2880"));
    }

    @Test
    void a_refund_is_shared_like_the_payment_with_the_sign_changed() {
        assertThat(split("-100.00", "1", "1", "1")).containsExactly(usd("-33.34"), usd("-33.33"), usd("-33.33"));
    }

    @Test
    void a_part_without_weight_gets_nothing() {
        assertThat(split("0.01", "0", "1", "1")).containsExactly(usd("0"), usd("0.01"), usd("0"));
    }

    @Test
    void without_any_weight_the_parts_are_equal() {
        assertThat(split("0.03", "0", "0")).containsExactly(usd("0.02"), usd("0.01"));
    }

    @Test
    void weights_that_cancel_out_count_by_their_size() {
        assertThat(split("1.00", "3", "-3")).containsExactly(usd("0.50"), usd("0.50"));
    }

    @Test
    void the_coin_of_the_currency_decides() {
        List<BigDecimal> three = List.of(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE);
        assertThat(Allocation.split(Money.of(100, "JPY"), three))
                .containsExactly(Money.of(34, "JPY"), Money.of(33, "JPY"), Money.of(33, "JPY"));
        // sums are kept to the hundredth
        assertThat(Allocation.split(Money.of(1, "BHD"), three).getFirst())
                .isEqualTo(Money.of(new BigDecimal("0.34"), "BHD"));
        assertThat(Allocation.split(usd("1"), 4, three).getFirst()).isEqualTo(usd("0.3334"));
    }

    @Test
    void amounts_finer_than_the_coin_and_no_weights_are_refused() {
        assertThatThrownBy(() -> split("0.001", "1")).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> split("1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[100]");
    }

    @Test
    void parts_of_random_amounts_add_up_and_are_less_than_a_cent_off() {
        SplittableRandom random = new SplittableRandom(RandomReceipts.SEED);
        for (int i = 0; i < 10_000; i++) {
            List<BigDecimal> weights = weights(random);
            BigInteger whole = BigInteger.valueOf(random.nextLong(-1_000_000, 1_000_000));
            List<BigInteger> parts = Allocation.coins(whole, weights);
            BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(parts.stream().reduce(BigInteger.ZERO, BigInteger::add))
                    .as("seed %d, number %d", RandomReceipts.SEED, i)
                    .isEqualTo(whole);
            for (int k = 0; k < parts.size(); k++) {
                // |part - whole x weight / sum| < 1, without dividing
                BigDecimal off = new BigDecimal(parts.get(k))
                        .multiply(sum)
                        .subtract(new BigDecimal(whole).multiply(weights.get(k)));
                assertThat(off.abs())
                        .as("seed %d, number %d, part %d", RandomReceipts.SEED, i, k)
                        .isLessThan(sum);
            }
        }
    }

    private static List<BigDecimal> weights(SplittableRandom random) {
        List<BigDecimal> weights = new ArrayList<>();
        weights.add(BigDecimal.valueOf(1 + random.nextInt(1000), 2));
        int more = random.nextInt(8);
        for (int k = 0; k < more; k++) {
            weights.add(BigDecimal.valueOf(random.nextInt(1000), random.nextInt(4)));
        }
        return weights;
    }

    @Test
    void in_another_order_the_same_parts_come_out_and_each_weight_keeps_its_own_unless_remainders_tie() {
        SplittableRandom random = new SplittableRandom(RandomReceipts.SEED);
        int untied = 0;
        for (int i = 0; i < 2_000; i++) {
            List<BigDecimal> weights = weights(random);
            List<BigDecimal> shuffled = new ArrayList<>(weights);
            Collections.shuffle(shuffled, new Random(i));
            BigInteger whole = BigInteger.valueOf(random.nextLong(1_000_000));
            List<BigInteger> parts = Allocation.coins(whole, weights);
            List<BigInteger> others = Allocation.coins(whole, shuffled);
            assertThat(others.stream().sorted())
                    .as("seed %d, number %d", RandomReceipts.SEED, i)
                    .isEqualTo(parts.stream().sorted().toList());
            if (weights.stream().map(BigDecimal::stripTrailingZeros).distinct().count() == weights.size()
                    && remaindersDiffer(whole, weights)) {
                untied++;
                assertThat(byWeight(shuffled, others)).isEqualTo(byWeight(weights, parts));
            }
        }
        assertThat(untied).as("trials without a tie").isGreaterThan(500);
    }

    private static boolean remaindersDiffer(BigInteger whole, List<BigDecimal> weights) {
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return weights.stream()
                        .map(w ->
                                w.multiply(new BigDecimal(whole)).remainder(sum).stripTrailingZeros())
                        .distinct()
                        .count()
                == weights.size();
    }

    private static Map<BigDecimal, BigInteger> byWeight(List<BigDecimal> weights, List<BigInteger> parts) {
        Map<BigDecimal, BigInteger> map = new HashMap<>();
        for (int k = 0; k < weights.size(); k++) {
            map.put(weights.get(k), parts.get(k));
        }
        return map;
    }

    private static List<Money> split(String whole, String... weights) {
        return Allocation.split(
                usd(whole), Stream.of(weights).map(BigDecimal::new).toList());
    }

    private static Money usd(String amount) {
        return Money.of(new BigDecimal(amount), "USD");
    }
}
