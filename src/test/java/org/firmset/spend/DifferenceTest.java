package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.firmset.measure.Cash;
import org.firmset.spend.Difference.Item;
import org.firmset.spend.Difference.Told;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Every difference to the budget is price, quantity or scope, and they add up. */
class DifferenceTest {
    @Test
    void price_variance_at_actual_quantity_and_quantity_variance_at_planned_price_by_their_definition() {
        // 100 at 5.00 planned, 110 at 5.50 bought: 0.50 x 110 and 10 x 5.00
        Difference difference =
                Difference.between("USD", List.of(item("bags", 100, "500.00")), List.of(item("bags", 110, "605.00")));
        assertThat(difference).isEqualTo(new Difference(usd("55.00"), usd("50.00"), usd("0.00")));
    }

    @Test
    void what_is_new_or_dropped_is_a_change_of_scope() {
        List<Told> told = Difference.told(
                "USD",
                List.of(item("gutters", 1, "145.00"), item("bags", 10, "70.00")),
                List.of(item("bags", 10, "70.00"), item("stove", 1, "895.00")));
        assertThat(told)
                .containsExactly(
                        new Told("gutters", new Difference(usd("0.00"), usd("0.00"), usd("-145.00"))),
                        new Told("stove", new Difference(usd("0.00"), usd("0.00"), usd("895.00"))));
    }

    @Test
    void items_with_the_same_key_are_one() {
        Difference difference = Difference.between(
                "USD", List.of(item("bags", 10, "70.00")), List.of(item("bags", 4, "28.00"), item("bags", 6, "45.00")));
        assertThat(difference).isEqualTo(new Difference(usd("3.00"), usd("0.00"), usd("0.00")));
    }

    @Test
    void ten_thousand_random_differences_add_up_exactly() {
        SplittableRandom random = new SplittableRandom(RandomReceipts.SEED);
        for (int i = 0; i < 10_000; i++) {
            List<Item> budget = items(random);
            List<Item> now = items(random);
            Money gap = sum(now).subtract(sum(budget));
            assertThat(Difference.between("USD", budget, now).sum())
                    .as("seed %d, number %d: %s, %s", RandomReceipts.SEED, i, budget, now)
                    .isEqualTo(gap);
        }
    }

    private static List<Item> items(SplittableRandom random) {
        List<Item> items = new ArrayList<>();
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            items.add(new Item(
                    "k" + random.nextInt(6),
                    BigDecimal.valueOf(random.nextInt(500), random.nextInt(3)),
                    Cash.ofCents(random.nextInt(100_000), "USD")));
        }
        return items;
    }

    private static Money sum(List<Item> items) {
        return items.stream().map(Item::amount).reduce(usd("0.00"), Money::add);
    }

    private static Item item(String key, int quantity, String amount) {
        return new Item(key, BigDecimal.valueOf(quantity), usd(amount));
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }
}
