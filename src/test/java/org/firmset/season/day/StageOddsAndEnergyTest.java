package org.firmset.season.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.measure.Temperature;
import org.firmset.season.SunnySite;
import org.firmset.trade.power.Overload;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class StageOddsAndEnergyTest {
    private static final LocalDate DAY = LocalDate.of(2027, 6, 12);
    private static final Homestead SITE = SunnySite.make();

    private static Stage stage(Homestead homestead, String key) {
        return homestead.stages().stream()
                .filter(s -> s.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Nested
    class Odds {
        @Test
        void multiply_dry_warm_and_still() {
            // the night is over 2 °C and the day over 16 °C with 0.8413 each (one deviation of 4 °C); wind of 4 m/s in
            // mean
            // stays under 8 m/s with 1 - exp(-pi) = 0.9568; it never rains
            assertThat(StageOdds.on(stage(SITE, "slab"), SiteSky.of(SITE), DAY)
                            .orElseThrow()
                            .odds())
                    .isCloseTo(0.841345 * 0.841345 * 0.956786, within(1e-5));
        }

        @Test
        void of_67_in_a_hundred_suffice_for_67_but_not_for_68() {
            SiteSky sky = SiteSky.of(SITE);
            Stage slab = stage(SITE, "slab");
            assertThat(StageOdds.suffice(slab, sky, DAY)).isTrue();
            SiteSky rainy = SiteSky.of(SunnySite.with("", """
                    , "forecast": [{"date": "2027-06-12", "high": "20 degC", "low": "9 degC", "wetPercent": 40}]"""));
            assertThat(StageOdds.suffice(slab, rainy, DAY)).isFalse();
            assertThat(StageOdds.suffice(slab, rainy, DAY.plusDays(1))).isTrue();
        }

        @Test
        void are_not_told_of_a_stage_that_asks_nothing() {
            assertThat(StageOdds.on(stage(SITE, "frame"), SiteSky.of(SITE), DAY))
                    .isEmpty();
            assertThat(StageOdds.suffice(stage(SITE, "frame"), SiteSky.of(SITE), DAY))
                    .isTrue();
        }

        @Test
        void take_frozen_ground_for_a_night_of_frost() {
            Conditions thawed = new Conditions(Temperature.ofCelsius(-3), null, false, null, null, true, null);
            assertThat(StageOdds.conditions(thawed).lowOverCelsius()).isZero();
        }
    }

    @Nested
    class Energy {
        @Test
        void of_a_stage_adds_up_its_tools_by_hour_and_by_pack() {
            // a bag: 600 W x half x 10 min = 50 Wh; 20 bags in 8 h are 125 Wh an hour; the vibrator 400 W x 15 min =
            // 100 Wh;
            // 40 Wh besides
            assertThat(StageEnergy.of(SITE).toolsWattHours("slab")).isCloseTo(265, within(1e-9));
            assertThat(StageEnergy.of(SITE).batteryWattHours("slab")).isEqualTo(265);
            assertThat(StageEnergy.of(SITE).batteryWattHours("frame")).isZero();
        }

        @Test
        void from_the_battery_includes_what_the_inverter_loses_and_is_rounded_up() {
            // 265 / 0.9 = 294.4
            assertThat(StageEnergy.of(withInverter(2000, 4000)).batteryWattHours("slab"))
                    .isEqualTo(295);
        }

        @Test
        void of_a_stage_that_is_not_there_is_a_mistake() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> StageEnergy.of(SITE).batteryWattHours("roof"))
                    .withMessageContaining("[roof]");
        }
    }

    @Nested
    class Overloads {
        @Test
        void are_told_when_all_tools_of_a_stage_at_once_are_too_much() {
            // mixer 600 W and vibrator 400 W run at 1000 W; the mixer starting asks 1200 W more
            assertThat(StageEnergy.of(withInverter(900, 2100)).overloads("slab"))
                    .containsExactly(
                            new Overload(LocalTime.NOON, 1000, 900, false),
                            new Overload(LocalTime.NOON, 2200, 2100, true));
            assertThat(StageEnergy.of(withInverter(1000, 2200)).overloads("slab"))
                    .isEmpty();
            assertThat(StageEnergy.of(SITE).overloads("slab")).isEmpty();
        }
    }

    private static Homestead withInverter(int continuous, int surge) {
        return SunnySite.with(
                ", \"inverter\": {\"continuous\": \"%d W\", \"surge\": \"%d W\", \"efficiencyPercent\": 90}"
                        .formatted(continuous, surge),
                "");
    }
}
