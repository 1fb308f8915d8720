package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.takeoff.Inputs.refused;
import static org.firmset.trade.takeoff.Inputs.work;
import static org.firmset.trade.trace.Results.amount;
import static org.firmset.trade.trace.Results.packs;
import static org.firmset.trade.trace.Results.warnings;

import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bags of every pour, tried on pads of a cubic foot each. */
class BagMixTest {
    private static String[] feet(int cubicFeet, String... more) {
        String[] all = new String[more.length + 6];
        String[] first = {"plan", "1 ft x 1 ft", "height", "1 ft", "count", Integer.toString(cubicFeet)};
        System.arraycopy(first, 0, all, 0, 6);
        System.arraycopy(more, 0, all, 6, more.length);
        return all;
    }

    private static Worksheet pour(int cubicFeet, String... more) {
        return work(Pads.class, feet(cubicFeet, more));
    }

    @Test
    void what_is_bought_is_marked() {
        assertThat(pour(6).lines(Line.Role.MATERIAL))
                .extracting(Line::key)
                .containsExactly("bags", "mixing-water", "wash-water");
        assertThat(pour(6).lines(Line.Role.LABOUR)).extracting(Line::key).containsExactly("labour");
    }

    @Test
    void mass_water_and_hours_are_those_of_whole_bags() {
        Worksheet pour = pour(6, "wastePercent", "5", "bagsPerHour", "4", "otherHours", "2");
        assertThat(amount(pour, "bags")).isCloseTo(10.5, within(1e-6));
        assertThat(packs(pour, "bags")).isEqualTo(11);
        assertThat(amount(pour, "bag-mass", "lb")).isCloseTo(880, within(1e-6));
        assertThat(amount(pour, "mixing-water", "qt")).isCloseTo(33, within(1e-5));
        assertThat(amount(pour, "wash-water", "qt")).isCloseTo(33, within(1e-5));
        assertThat(amount(pour, "labour")).isEqualTo(11 / 4.0 + 2);
    }

    @Test
    void a_pour_that_takes_whole_bags_takes_no_more() {
        // 27 ft3 / 0.375 ft3: nine decimals of a cubic metre must not make it 73
        Worksheet pour = pour(27, "wastePercent", "0", "bagYield", "0.375 ft3", "bagMass", "50 lb");
        assertThat(packs(pour, "bags")).isEqualTo(72);
    }

    @Test
    void water_that_does_not_go_with_the_bag_is_warned_of() {
        // 40 lb are 18.14 kg, of which 6 % are 1.09 and 14 % are 2.54 L
        String[] small = {"bagMass", "40 lb", "bagYield", "0.3 ft3", "waterPerBag", ""};
        small[5] = "1.09 L";
        assertThat(warnings(pour(1, small))).isEmpty();
        small[5] = "1.08 L";
        assertThat(warnings(pour(1, small)))
                .containsExactly(
                        "The mixing water is 6 % of the mass of the bag; labels ask for about 6 to 14 %. Read it on the"
                                + " bag.");
        small[5] = "2.54 L";
        assertThat(warnings(pour(1, small))).isEmpty();
        small[5] = "3 qt";
        assertThat(warnings(pour(1, small)))
                .containsExactly(
                        "The mixing water is 16 % of the mass of the bag; labels ask for about 6 to 14 %. Read it on the"
                                + " bag.");
    }

    @Test
    @DisplayName("CM-10: 0.0075 ft3 a pound, verified")
    void usual_yield_of_a_bag() {
        assertThat(BagYield.ofMass(0.45359237) / (0.3048 * 0.3048 * 0.3048)).isCloseTo(0.0075, within(1e-12));
    }

    @Nested
    class Refusals {
        @Test
        void a_yield_that_does_not_go_with_the_bag() {
            // 80 lb make about 17.0 L
            assertThat(refused(Pads.class, feet(1, "bagYield", "27.3 L")))
                    .hasMessage(
                            "bagYield [0.0273 m3] does not go with a bag of 36.2873896 kg, which makes about 17.0 L. Enter from"
                                    + " 8.5 L to 27.2 L for this bag, as its label says.");
            assertThat(refused(Pads.class, feet(1, "bagYield", "8.4 L")).input())
                    .isEqualTo("bagYield");
            assertThat(packs(pour(1, "bagYield", "8.5 L"), "bags")).isEqualTo(4);
            assertThat(packs(pour(1, "bagYield", "27.1 L"), "bags")).isEqualTo(2);
        }

        @ParameterizedTest
        @ValueSource(doubles = {0, -1, Double.NaN})
        void a_bag_without_mass(double kilograms) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BagYield.ofMass(kilograms))
                    .withMessage("kilograms [" + kilograms + "] must be over 0");
        }
    }

    @Nested
    class WhatLiesInIt {
        @Test
        void steel_and_sleeves_take_their_room() {
            // 490 lb of steel are a cubic foot
            Worksheet pour = pour(6, "steel", "490 lb", "sleeves", "2 ft3", "wastePercent", "0");
            assertThat(amount(pour, "volume", "ft3")).isCloseTo(3, within(1e-6));
            assertThat(packs(pour, "bags")).isEqualTo(5);
        }

        @Test
        void more_than_the_pour_is_refused_by_its_name() {
            assertThat(refused(Pads.class, feet(1, "steel", "491 lb")))
                    .hasMessage(
                            "steel [222.71385367 kg] takes up the whole pour. Enter what lies in this pour of 0.028 m3 only.");
            assertThat(refused(Pads.class, feet(1, "steel", "100 lb", "sleeves", "1 ft3")))
                    .hasMessage(
                            "sleeves [0.028316847 m3] takes up the whole pour. Enter what lies in this pour of 0.028 m3 only.");
            assertThat(pour(1, "steel", "489 lb").line("bags")).isPresent();
        }
    }
}
