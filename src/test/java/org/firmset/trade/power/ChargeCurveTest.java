package org.firmset.trade.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ChargeCurveTest {
    @Test
    void a_tool_takes_its_watts_times_its_duty_times_its_hours() {
        ChargeCurve curve = ChargeCurve.of(Camp.system(), List.of(Camp.dark(0, Camp.mixing(9, 120))), 100);
        assertThat(curve.points()).hasSize(97);
        assertThat(curve.points().getLast().wattHours()).isCloseTo(2000 - 600 * 0.5 * 2, within(1e-9));
        assertThat(curve.lowest().at()).isEqualTo(Camp.DAY.atTime(11, 0));
        assertThat(curve.lowest().leftWattHours()).isCloseTo(1400 - 400, within(1e-9));
        assertThat(curve.broken()).isEmpty();
    }

    @Test
    void the_floor_is_broken_when_even_flows_within_a_step_reach_it() {
        // from 1000 Wh 300 W go down to the floor of 400 Wh in 2 hours
        ChargeCurve curve = ChargeCurve.of(Camp.system(), List.of(Camp.dark(0, Camp.mixing(9, 480))), 50);
        assertThat(curve.broken()).contains(Camp.DAY.atTime(11, 0));
        ChargeCurve odd = ChargeCurve.of(Camp.system(), List.of(Camp.dark(0, Camp.mixing(9, 480))), 51);
        assertThat(odd.broken()).contains(Camp.DAY.atTime(11, 4));
    }

    @Test
    void beyond_the_floor_the_curve_goes_on_and_what_an_empty_battery_owes_is_told() {
        ChargeCurve curve = ChargeCurve.of(Camp.system(), List.of(Camp.dark(0, Camp.mixing(9, 480))), 50);
        assertThat(curve.lowest().wattHours()).isZero();
        assertThat(curve.lowest().leftWattHours()).isCloseTo(-400, within(1e-9));
        assertThat(curve.energy().unmet()).isCloseTo(300 * 8 - 1000, within(1e-9));
    }

    @Test
    void losses_stand_on_the_way_in_and_on_the_way_out() {
        PowerSystem lossy = new PowerSystem(
                new Battery(2000, 0, 80, 90, ColdShare.ALWAYS_ALL, 0),
                100,
                new Inverter(2000, 4000, 90),
                Generator.NONE);
        ChargeCurve out = ChargeCurve.of(lossy, List.of(Camp.dark(0, Camp.mixing(9, 60))), 100);
        assertThat(out.points().getLast().wattHours()).isCloseTo(2000 - 300 / 0.9 / 0.9, within(1e-9));
        ChargeCurve in = ChargeCurve.of(lossy, Camp.sunny(1, 5), 0);
        assertThat(in.points().getLast().wattHours()).isCloseTo(100 * 5 * 0.75 * 0.8, within(1e-6));
        assertThat(in.energy().sunUsed()).isCloseTo(375, within(1e-6));
    }

    @Test
    void a_full_battery_takes_no_more_and_the_rest_of_the_sun_is_wasted() {
        PowerSystem system = new PowerSystem(Camp.BATTERY, 400, Camp.INVERTER, Generator.NONE);
        ChargeCurve curve = ChargeCurve.of(system, Camp.sunny(1, 5), 90);
        assertThat(curve.points().getLast().wattHours()).isEqualTo(2000);
        assertThat(curve.energy().sunUsed()).isCloseTo(200, within(1e-6));
        assertThat(curve.energy().sunWasted()).isCloseTo(400 * 5 * 0.75 - 200, within(1e-6));
    }

    @Test
    void sun_that_tools_use_at_once_never_passes_the_battery() {
        PowerSystem lossy = new PowerSystem(
                new Battery(2000, 0, 50, 50, ColdShare.ALWAYS_ALL, 0), 100_000, Camp.INVERTER, Generator.NONE);
        ChargeCurve curve = ChargeCurve.of(lossy, Camp.sunny(1, 5, Camp.mixing(12, 60)), 100);
        assertThat(curve.lowest().wattHours()).isEqualTo(2000);
    }

    @Nested
    class Cold {
        @Test
        void locks_a_part_of_the_charge_in() {
            Battery lead = new Battery(1000, 50, 100, 100, ColdShare.LEAD_ACID, 0);
            assertThat(lead.limitWattHours(26.7)).isCloseTo(500, within(1e-9));
            assertThat(lead.limitWattHours(15.6)).isCloseTo(1000 - 1000 / 1.11 * 0.5, within(1e-9));
            assertThat(lead.limitWattHours(-40)).isCloseTo(1000 - 1000 / 1.59 * 0.5, within(1e-9));
        }

        @Test
        void a_frozen_battery_is_never_charged() {
            PowerSystem system = new PowerSystem(Camp.BATTERY, 400, Camp.INVERTER, Generator.NONE);
            PowerDay frozen = new PowerDay(Camp.DAY, Camp.sun(Camp.DAY, 5), -1, 0, List.of(), 0);
            ChargeCurve curve = ChargeCurve.of(system, List.of(frozen), 50);
            assertThat(curve.points().getLast().wattHours()).isEqualTo(1000);
            assertThat(curve.energy().sunWasted()).isCloseTo(1500, within(1e-6));
        }

        @Test
        void a_colder_day_can_break_the_limit_at_midnight_with_nothing_running() {
            PowerSystem system = new PowerSystem(
                    new Battery(2000, 20, 100, 100, ColdShare.LITHIUM, 0), 0, Camp.INVERTER, Generator.NONE);
            PowerDay cold = new PowerDay(Camp.DAY.plusDays(1), SunCurve.dark(15), -20, 0, List.of(), 0);
            ChargeCurve curve = ChargeCurve.of(system, List.of(Camp.dark(0), cold), 50);
            assertThat(curve.broken()).contains(Camp.DAY.plusDays(1).atStartOfDay());
            assertThat(curve.lowest().at()).isEqualTo(Camp.DAY.plusDays(1).atStartOfDay());
            assertThat(curve.lowest().leftWattHours()).isCloseTo(1000 - 2000 * (1 - 0.6 * 0.8), within(1e-9));
        }
    }

    @Nested
    class GeneratorRuns {
        private final PowerSystem system = Camp.withGenerator(1000, LocalTime.of(10, 0), 240);

        @Test
        void it_feeds_the_tools_and_charges_with_the_rest() {
            PowerDay day = Camp.dark(0, Camp.mixing(10, 60)).withGeneratorMinutes(60);
            ChargeCurve curve = ChargeCurve.of(system, List.of(day), 50);
            assertThat(curve.points().getLast().wattHours()).isCloseTo(1000 + 700, within(1e-9));
            assertThat(curve.energy().generator()).isCloseTo(1000, within(1e-9));
            assertThat(system.generator().litres(1000)).isCloseTo(0.6, within(1e-9));
            assertThat(system.generator().cost(1000)).isCloseTo(1.2, within(1e-9));
        }

        @Test
        void it_runs_no_longer_than_it_may_and_burns_nothing_for_a_full_battery() {
            ChargeCurve longer = ChargeCurve.of(system, List.of(Camp.dark(0).withGeneratorMinutes(600)), 0);
            assertThat(longer.energy().generator()).isCloseTo(2000, within(1e-9));
            ChargeCurve full = ChargeCurve.of(system, List.of(Camp.dark(0).withGeneratorMinutes(600)), 100);
            assertThat(full.energy().generator()).isZero();
        }
    }

    @Test
    void refuses_days_that_do_not_follow_each_other_or_have_other_steps() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChargeCurve.of(Camp.system(), List.of(Camp.dark(0), Camp.dark(2)), 100))
                .withMessage("date [2027-05-03] must follow [2027-05-01] and have equal steps");
        PowerDay hourly = new PowerDay(Camp.DAY.plusDays(1), SunCurve.dark(60), 20, 0, List.of(), 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChargeCurve.of(Camp.system(), List.of(Camp.dark(0), hourly), 100));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChargeCurve.of(Camp.system(), List.of(), 100))
                .withMessage("days [] must be one or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChargeCurve.of(Camp.system(), List.of(Camp.dark(0)), 101))
                .withMessageStartingWith("startPercent [101.0]");
    }
}
