package org.firmset.trade.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class PowerRecordsTest {
    @Test
    void a_table_is_read_along_straight_lines_and_as_at_its_ends_beyond_them() {
        BrokenLine line = BrokenLine.of(0, 10, 10, 20, 20, 0);
        assertThat(line.at(-5)).isEqualTo(10);
        assertThat(line.at(0)).isEqualTo(10);
        assertThat(line.at(2.5)).isEqualTo(12.5);
        assertThat(line.at(10)).isEqualTo(20);
        assertThat(line.at(15)).isEqualTo(10);
        assertThat(line.at(25)).isZero();
        assertThat(BrokenLine.of(3, 7).at(100)).isEqualTo(7);
    }

    @Test
    void a_table_must_rise() {
        refused(() -> BrokenLine.of(), "points [] of a table must be one or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BrokenLine.of(1, 0, 1, 5))
                .withMessageEndingWith("must rise in x");
    }

    @Test
    void the_cold_never_adds_and_never_takes_all() {
        for (ColdShare cold : ColdShare.values()) {
            double before = 0;
            for (int celsius = -40; celsius <= 40; celsius++) {
                assertThat(cold.at(celsius)).as("%s at %d", cold, celsius).isBetween(Math.max(0.5, before), 1.0);
                before = cold.at(celsius);
            }
            assertThat(cold.at(40)).isEqualTo(1);
        }
    }

    @Test
    void fuel_for_a_kilowatt_hour_is_most_at_low_load() {
        FuelChart chart = new FuelChart(20_000, List.of(2.27, 3.41, 4.92, 6.06));
        assertThat(chart.litresPerKilowattHour(100)).isCloseTo(0.303, within(0.001));
        assertThat(chart.litresPerKilowattHour(25)).isCloseTo(0.454, within(0.001));
        assertThat(chart.litresPerHour(10)).isEqualTo(2.27);
    }

    @Test
    void refuses_what_is_out_of_range() {
        refused(
                () -> new Battery(-1, 20, 90, 90, ColdShare.LITHIUM, 0),
                "capacityWattHours [-1.0] must be from 0.0 to 1.0E7");
        refused(
                () -> new Battery(1, 100, 90, 90, ColdShare.LITHIUM, 0),
                "floorPercent [100.0] must be from 0.0 to 99.0");
        refused(() -> new Battery(1, 0, 0, 90, ColdShare.LITHIUM, 0), "chargePercent [0.0] must be from 1.0 to 100.0");
        refused(
                () -> new Battery(1, 0, 90, 101, ColdShare.LITHIUM, 0),
                "dischargePercent [101.0] must be from 1.0 to 100.0");
        refused(() -> new Inverter(100, 99, 90), "surgeWatts [99.0] must be from 100.0 to 1.0E7");
        refused(() -> new Tool("saw", 100, 101, 2), "dutyPercent [101.0] must be from 0.0 to 100.0");
        refused(() -> new Tool("saw", 100, 50, 0.5), "surgeFactor [0.5] must be from 1.0 to 10.0");
        refused(() -> new PowerBlock(Camp.MIXER, LocalTime.of(23, 0), 61), "minutes [61.0] must be from 0.0 to 60.0");
        refused(() -> new Generator(1, 1, 1, LocalTime.of(23, 0), 61), "mostMinutes [61.0] must be from 0.0 to 60.0");
        refused(() -> new FuelChart(1000, List.of(1.0)), "litresPerHour [1.0] must be four");
        refused(
                () -> new Panels(400, 91, 180, 20, 0, 45, Panels.SunKnown.ON_PANELS),
                "tiltDegrees [91.0] must be from 0.0 to 90.0");
        refused(() -> Photovoltaics.lossPercent(101), "loss percent [101.0] must be from 0.0 to 100.0");
        refused(() -> RestVoltage.percent(Double.NaN), "volts [NaN] must be from 0.0 to 20.0");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }
}
