package org.firmset.season.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Style;
import org.firmset.season.SunnySite;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.trade.power.Battery;
import org.firmset.trade.power.ColdShare;
import org.firmset.trade.power.Generator;
import org.firmset.trade.power.Inverter;
import org.junit.jupiter.api.Test;

class SitePowerTest {
    @Test
    void what_an_older_file_says_of_power_means_what_it_meant() {
        SitePower power = SitePower.of(SunnySite.make()).orElseThrow();
        assertThat(power.system().battery()).isEqualTo(new Battery(2000, 20, 100, 100, ColdShare.ALWAYS_ALL, -60));
        assertThat(power.system().panelWatts()).isEqualTo(400);
        assertThat(power.system().inverter().fromBattery(100)).isEqualTo(100);
        assertThat(power.system().generator()).isEqualTo(Generator.NONE);
        assertThat(power.baseWatts()).isZero();
    }

    @Test
    void every_part_of_the_kit_reaches_the_sums() {
        SitePower power = SitePower.of(SunnySite.with("""
                        , "kind": "lead-acid", "chargePercent": 85, "dischargePercent": 95,
                        "leastChargeTemperature": "32 degF", "baseLoad": "12 W",
                        "inverter": {"continuous": "1500 W", "surge": "3 kW", "efficiencyPercent": 90},
                        "generator": {"power": "2 kW", "hoursPerDay": "4 h", "costPerKilowattHour": "0.60 USD",
                          "litresPerKilowattHour": 0.5, "fromHour": 9}""", "")).orElseThrow();
        assertThat(power.system().battery()).isEqualTo(new Battery(2000, 20, 85, 95, ColdShare.LEAD_ACID, 0));
        assertThat(power.system().inverter()).isEqualTo(new Inverter(1500, 3000, 90));
        // 0.60 a kWh at half a litre each is 1.20 a litre
        assertThat(power.system().generator()).isEqualTo(new Generator(2000, 0.5, 1.2, LocalTime.of(9, 0), 240));
        assertThat(power.baseWatts()).isEqualTo(12);
    }

    @Test
    void a_generator_stops_at_midnight() {
        SitePower power = SitePower.of(SunnySite.with("""
                        , "generator": {"power": "2 kW", "hoursPerDay": "6 h", "costPerKilowattHour": "0.60 USD",
                          "fromHour": 22}""", "")).orElseThrow();
        assertThat(power.system().generator().mostMinutes()).isEqualTo(120);
    }

    @Test
    void fuel_costs_the_plan_what_is_written_even_where_its_litres_are_not_known() {
        PlanningProblem problem = ProblemWriter.write(SunnySite.with("""
                        , "generator": {"power": "2 kW", "hoursPerDay": "6 h", "costPerKilowattHour": "0.60 USD"}""", ""), LocalDate.of(2027, 3, 1), Style.SOONEST);
        assertThat(problem.site().generatorCentsPerKilowattHour()).isEqualTo(60);
    }
}
