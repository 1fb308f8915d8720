package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.firmset.measure.Cash;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.Units;
import org.firmset.spend.TripCost.Borne;
import org.firmset.spend.TripCost.ByFuel;
import org.firmset.spend.TripCost.ByRate;
import org.firmset.spend.TripCost.Part;
import org.firmset.spend.TripCost.Rule;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tools, trips and stock that several subprojects use. */
class SharedThingsTest {
    @Nested
    class Trips {
        @ParameterizedTest
        @CsvSource({"1000 mi, 0.67, 670.00", "1200 mi, 0.725, 870.00"})
        void mileage_MN_02_IRS_standard_rates_of_2024_and_2026(String distance, BigDecimal rate, String cost) {
            assertThat(new ByRate(length(distance), rate, "USD", length("1 mi")).cost())
                    .isEqualTo(usd(cost));
        }

        @Test
        void fuel_is_distance_times_use_times_price() {
            // 186 mi at 1 gal for 15 mi and 4.199 a gallon: 52.07
            assertThat(new ByFuel(length("186 mi"), BigDecimal.ONE, length("15 mi"), new BigDecimal("4.199"), "USD")
                            .cost())
                    .isEqualTo(usd("52.07"));
        }

        @Test
        void a_trip_is_shared_by_mass_MN_05_common_practice() {
            List<Part> parts = List.of(part("water", 0, 4_000), part("cabin", 0, 6_000), part("shop", 0, 2_000));
            assertThat(trip("150.00").shared(Rule.BY_MASS, parts))
                    .extracting(b -> b.part().subproject(), Borne::amount, Borne::rule)
                    .containsExactly(
                            tuple("water", usd("50.00"), Rule.BY_MASS),
                            tuple("cabin", usd("75.00"), Rule.BY_MASS),
                            tuple("shop", usd("25.00"), Rule.BY_MASS));
        }

        @Test
        void a_trip_is_shared_by_hours_and_equally_when_nobody_worked() {
            List<Part> parts = List.of(part("water", 30, 1), part("shop", 10, 9));
            assertThat(trip("135.01").shared(Rule.BY_HOURS, parts))
                    .extracting(Borne::amount)
                    .containsExactly(usd("101.26"), usd("33.75"));
            List<Part> idle = List.of(part("water", 0, 5), part("shop", 0, 0));
            assertThat(trip("135.01").shared(Rule.BY_HOURS, idle))
                    .containsExactly(
                            new Borne(part("water", 0, 5), usd("67.51"), Rule.EQUALLY),
                            new Borne(part("shop", 0, 0), usd("67.50"), Rule.EQUALLY));
        }

        private TripCost trip(String sum) {
            return new TripCost(
                    new ByRate(length("1 mi"), BigDecimal.ONE, "USD", length("1 mi")),
                    usd("2.00"),
                    usd(sum).subtract(usd("3.00")));
        }

        private static Length length(String text) {
            return (Length) Units.parse(Dimension.LENGTH, text);
        }
    }

    @Nested
    class HiredOrBought {
        @Test
        void buying_wins_when_price_less_resale_is_under_all_hires() {
            HireOrBuy compactor = choice("700.00", "400.00", "85.00", 1, 2, 1);
            assertThat(compactor.buying()).isEqualTo(usd("330.00"));
            assertThat(compactor.hiring()).isEqualTo(usd("400.00"));
            assertThat(compactor.buy()).isTrue();
            assertThat(compactor.saved()).isEqualTo(usd("70.00"));
            assertThat(compactor.shared()).containsExactly(usd("82.50"), usd("165.00"), usd("82.50"));
            // 300 / (133.33 - 10) = 2.43
            assertThat(compactor.buyFromUses()).hasValue(3);
        }

        @Test
        void hiring_wins_for_one_use_and_ties() {
            HireOrBuy once = choice("700.00", "400.00", "85.00", 1);
            assertThat(once.buy()).isFalse();
            assertThat(once.shared()).containsExactly(usd("105.00"));
            HireOrBuy tie = choice("95.00", "0.00", "85.00", 1);
            assertThat(tie.buying()).isEqualTo(tie.hiring());
            assertThat(tie.buy()).isFalse();
            assertThat(tie.buyFromUses()).hasValue(2);
        }

        @Test
        void upkeep_over_hire_never_pays() {
            Money dear = usd("500.00");
            HireOrBuy choice = new HireOrBuy(usd("1.00"), usd("0.00"), dear, usd("85.00"), usd("0.00"), uses(1));
            assertThat(choice.buyFromUses()).isEmpty();
            assertThatThrownBy(() -> choice("1.00", "0.00", "1.00")).hasMessageContaining("uses []");
        }

        @Test
        void uses_beyond_counting_never_pay() {
            // three hires for 100.01 in all, upkeep of 33.33: a third of a cent saved each
            HireOrBuy choice = new HireOrBuy(
                    usd("9000000.00"), usd("0.00"), usd("33.33"), usd("0.00"), usd("33.34"), uses(1, 1, 1));
            assertThat(choice.buyFromUses()).hasValue(900_000_001);
            HireOrBuy dearer = new HireOrBuy(
                    usd("900000000.00"), usd("0.00"), usd("33.33"), usd("0.00"), usd("33.34"), uses(1, 1, 1));
            assertThat(dearer.buyFromUses()).isEmpty();
        }

        private HireOrBuy choice(String price, String resale, String day, int... days) {
            return new HireOrBuy(usd(price), usd(resale), usd("10.00"), usd(day), usd("20.00"), uses(days));
        }

        private List<HireOrBuy.Use> uses(int... days) {
            return java.util.Arrays.stream(days)
                    .mapToObj(d -> new HireOrBuy.Use(Share.all("water", null), d))
                    .toList();
        }
    }

    @Nested
    class Stock {
        private final Lots lots = new Lots("USD", List.of(lot(20, 10, "75.00"), lot(1, 3, "20.00")));

        @Test
        void the_oldest_lot_goes_first_and_what_is_left_keeps_its_cost() {
            Lots.Use use = lots.use(5);
            // 3 of the first lot for 20.00 and 2 of ten for 75.00
            assertThat(use.cost()).isEqualTo(usd("35.00"));
            assertThat(use.missing()).isZero();
            assertThat(use.left().lots()).containsExactly(lot(20, 8, "60.00"));
        }

        @Test
        void no_cent_is_lost_pack_by_pack() {
            Lots left = lots.plus(lot(25, 7, "33.34"));
            Money used = usd("0.00");
            while (left.packs() > 0) {
                Lots.Use use = left.use(1);
                used = used.add(use.cost());
                left = use.left();
                assertThat(used.add(left.value())).isEqualTo(usd("128.34"));
            }
            assertThat(used).isEqualTo(usd("128.34"));
        }

        @Test
        void packs_that_are_not_there_are_told_and_cost_nothing() {
            Lots.Use use = lots.use(15);
            assertThat(use.cost()).isEqualTo(usd("95.00"));
            assertThat(use.missing()).isEqualTo(2);
            assertThat(use.left().lots()).isEmpty();
        }

        private static Lots.Lot lot(int day, int packs, String cost) {
            return new Lots.Lot(LocalDate.of(2026, 10, day), packs, usd(cost));
        }
    }

    private static Part part(String subproject, long quarters, long grams) {
        return new Part(subproject, null, quarters, grams);
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }
}
