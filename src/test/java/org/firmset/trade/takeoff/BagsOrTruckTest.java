package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.keys;
import static org.firmset.trade.trace.Results.told;
import static org.firmset.trade.trace.Results.word;

import java.util.List;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BagsOrTruckTest {
    private static final String[] TWO_YARDS = {
        "volume", "2 yd3",
        "bagPrice", "6.50",
        "truckPrice", "180",
        "truckFees", "150",
        "runCost", "58",
        "runHours", "4",
        "hourWorth", "20"
    };

    private static String[] with(String... more) {
        String[] all = new String[TWO_YARDS.length + more.length];
        System.arraycopy(TWO_YARDS, 0, all, 0, TWO_YARDS.length);
        System.arraycopy(more, 0, all, TWO_YARDS.length, more.length);
        return all;
    }

    @Test
    void two_yards() {
        assertThat(told(work(BagsOrTruck.class, TWO_YARDS))).isEqualTo("""
                bags: 90 bags; B = V / y, rounded up; V: volume, 54 ft3; y: yield of a bag, 0.6 ft3
                runs: 8 runs; R = B m / c, whole bags in each; m: mass of a bag, 80 lb; c: cargo room, 1,000 lb
                bag-cost: 1,049; B p + R k; p: price of a bag, 6.5; k: cost of a run, 58
                truck-cost: 510; max(V, v) q + n f; v: least volume charged, 1 yd3; q: price of a cubic metre, 235.43; \
                n: trucks, 1; f: fees of a truck, 150
                bag-hours: 50 h; B / r + R h; r: bags an hour, 5; h: hours of a run, 4 h
                truck-hours: 3.08 h; V / g; g: placed in an hour, 0.65 yd3
                turn-money: 0.5556 yd3; least volume above which bags stay dearer, whole bags and runs counted
                turn-hours: 0.02222 yd3; least volume above which bags stay dearer, whole bags and runs counted
                turn-all: 0.2889 yd3; least volume above which bags stay dearer, whole bags and runs counted
                better: the truck
                """);
    }

    @Test
    void smaller_and_larger_pours_in_a_table() {
        List<List<String>> rows = work(BagsOrTruck.class, TWO_YARDS).tables().getFirst().rows().stream()
                .map(r -> r.stream().map(a -> Show.amount(a, UnitSystem.US)).toList())
                .toList();
        assertThat(rows)
                .hasSize(7)
                .startsWith(List.of("0.5 yd3", "265.5", "330", "12.6 h", "0.77 h"))
                .endsWith(List.of("6 yd3", "3,089", "1,230", "146 h", "9.23 h"));
    }

    @Test
    void turning_point_counts_whole_bags_and_runs() {
        // 24 bags: 156 + 2 x 58 = 272 under 330; 25 bags: 162.50 + 3 x 58 = 336.50
        Worksheet sheet = work(BagsOrTruck.class, TWO_YARDS);
        assertThat(amount(sheet, "turn-money", "ft3")).isCloseTo(25 * 0.6, within(1e-6));
    }

    @Test
    void hours_count_only_where_they_are_worth_something() {
        Worksheet money = work(BagsOrTruck.class, "volume", "10 ft3", "bagPrice", "6.50", "truckPrice", "180");
        assertThat(keys(money)).doesNotContain("turn-all");
        assertThat(word(money, "better")).isEqualTo("bags");
        Worksheet hours =
                work(BagsOrTruck.class, "volume", "10 ft3", "bagPrice", "6.50", "truckPrice", "180", "hourWorth", "30");
        assertThat(keys(hours)).contains("turn-all");
        // 17 bags cost 110.50 and 3.4 h, the truck 180 and 0.57 h: 30 an hour make up for it
        assertThat(word(hours, "better")).isEqualTo("the truck");
    }

    @Test
    void bags_that_cost_as_much_as_the_truck_are_better() {
        // 10 bags of 18 against the least charge of 180
        Worksheet even = work(BagsOrTruck.class, "volume", "6 ft3", "bagPrice", "18", "truckPrice", "180");
        assertThat(amount(even, "bag-cost")).isEqualTo(amount(even, "truck-cost"));
        assertThat(word(even, "better")).isEqualTo("bags");
    }

    @Test
    void a_truck_that_takes_long_to_unload_is_worth_less() {
        // 50 bags of 20 L: 500 and 10 h; the truck 180 and 25 h, so at 22 an hour bags are better by 10
        String[] given = {
            "volume", "1 m3",
            "bagYield", "20 L",
            "bagPrice", "10",
            "truckPrice", "180",
            "truckPriceVolume", "1 m3",
            "placedPerHour", "0.04 m3",
            "hourWorth", "22"
        };
        Worksheet slow = work(BagsOrTruck.class, given);
        assertThat(amount(slow, "bag-hours")).isEqualTo(10);
        assertThat(amount(slow, "truck-hours")).isCloseTo(25, within(1e-9));
        assertThat(word(slow, "turn-hours")).isEqualTo("never, up to 40 m3");
        assertThat(word(slow, "better")).isEqualTo("bags");
        given[13] = "15";
        assertThat(word(work(BagsOrTruck.class, given), "better")).isEqualTo("the truck");
    }

    @Test
    void a_second_truck_costs_its_fees_again() {
        Worksheet nine =
                work(BagsOrTruck.class, "volume", "9 yd3", "bagPrice", "6", "truckPrice", "180", "truckFees", "150");
        assertThat(amount(nine, "truck-cost")).isCloseTo(9 * 180 + 2 * 150, within(1e-4));
    }

    @Test
    void a_truck_that_never_wins() {
        Worksheet never = work(BagsOrTruck.class, "volume", "1 yd3", "bagPrice", "0.10", "truckPrice", "180");
        // 2000 bags of 0.6 ft3
        assertThat(word(never, "turn-money")).isEqualTo("never, up to 34 m3");
        Worksheet large = work(BagsOrTruck.class, "volume", "30 m3", "bagPrice", "0.10", "truckPrice", "180");
        assertThat(word(large, "turn-money")).isEqualTo("never, up to 60 m3");
    }

    @Nested
    class Refusals {
        @Test
        void cargo_room_for_no_bag() {
            assertThat(refused(BagsOrTruck.class, with("cargoRoom", "79 lb")))
                    .hasMessage("cargoRoom [35.83379723 kg] does not hold one bag. Enter at least 36.2873896 kg.");
            assertThat(amount(work(BagsOrTruck.class, with("cargoRoom", "80 lb")), "runs"))
                    .isEqualTo(90);
        }

        @Test
        void a_least_charge_over_what_a_truck_brings() {
            assertThat(refused(BagsOrTruck.class, with("truckLeast", "5 m3", "truckMost", "4 m3")))
                    .hasMessage("truckLeast [5 m3] is more than a truck brings. Enter at most 4 m3.");
            assertThat(work(BagsOrTruck.class, with("truckLeast", "4 m3", "truckMost", "4 m3"))
                            .line("better"))
                    .isPresent();
        }
    }
}
