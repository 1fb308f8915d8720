package org.firmset.homestead.file;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.homestead.BetweenTrips;
import org.firmset.homestead.DayRoutine;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.WaterStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunWeatherPowerRulesTest {
    private static final String MONTHS = "["
            + "{\"meanHigh\": \"9 degC\", \"meanLow\": \"1 degC\", \"wetDays\": 6, \"sunHours\": 4},"
                    .repeat(12)
                    .replaceAll(",$", "]");
    private static final String DAY =
            "{\"date\": \"%s\", \"high\": \"20 degC\", \"low\": \"9 degC\", \"wetPercent\": 30}";

    private static List<Fault> faults(String pointer, String json) {
        return Document.sound().with(pointer, json).faults();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /place/horizon | [{"fromDegrees": 90, "toDegrees": 90.0, "elevationDegrees": 5}] | /place/horizon/0/toDegrees | is where the sector begins as well
            /place/horizon | [{"fromDegrees": 90, "toDegrees": 361, "elevationDegrees": 5}] | /place/horizon/0/toDegrees | is too large
            /place/forecast | [{"date": "2027-05-01", "high": "8 degC", "low": "9 degC", "wetPercent": 3}] | /place/forecast/0/low | is over the high 8 degC
            /place/forecast | [{"date": "2027-05-01", "high": "8 degC", "low": "7 degC", "wetPercent": 101}] | /place/forecast/0/wetPercent | is too large
            /power/floorPercent | 100 | /power/floorPercent | is too large
            /power/inverter | {"continuous": "2 kW", "surge": "1.9 kW", "efficiencyPercent": 90} | /power/inverter/surge | is under what it gives all the time, 2000 W
            /power/poorDayPercent | 51 | /power/poorDayPercent | is too large
            /power/poorDayPercent | 0 | /power/poorDayPercent | is too small
            /power/generator/fromHour | 24 | /power/generator/fromHour | is too large
            /tools/0/surgeFactor | 0.9 | /tools/0/surgeFactor | is too small
            /tools/0/dutyPercent | 0 | /tools/0/dutyPercent | is too small
            /stages/0/toolTimes | [{"tool": "saw", "minutes": 5}] | /stages/0/toolTimes/0/tool | names a tool that is not there
            /stages/1/toolTimes | [{"tool": "mixer", "minutes": 5}, {"tool": "mixer", "minutes": 6}] | /stages/1/toolTimes/1/tool | stands there twice
            /stages/1/conditions | {"coldestDay": "20 degC", "hottestDay": "19 degC", "dryDay": true} | /stages/1/conditions/coldestDay | is over the hottest day 19 degC
            /stages/1/conditions | {"dryDay": true, "leastOdds": 60} | /stages/1/conditions/leastOdds | cannot be reckoned without the climate of the place
            /water | {"tank": "100 L", "now": "101 L"} | /water/now | is more than the tanks hold, 0.1 m3
            /openDates/routine | {"earliestHour": 24} | /openDates/routine/earliestHour | is too large
            """)
    void what_does_not_fit_is_told_with_its_place_and_a_remedy(
            String pointer, String json, String place, String problem) {
        List<Fault> faults = faults(pointer, json);
        assertThat(faults).extracting(Fault::pointer, Fault::problem).containsExactly(tuple(place, problem));
        assertThat(faults).allMatch(f -> !f.remedy().isBlank());
    }

    private static org.assertj.core.groups.Tuple tuple(Object... values) {
        return org.assertj.core.api.Assertions.tuple(values);
    }

    @Test
    void a_forecast_goes_on_day_after_day() {
        assertThat(faults("/place/forecast", forecast("2027-05-02", "2027-05-01", "2027-05-03")))
                .isEmpty();
        assertThat(faults("/place/forecast", forecast("2027-05-01", "2027-05-01")))
                .extracting(Fault::line)
                .containsExactly("/place/forecast/1/date [2027-05-01] has a forecast already. Keep one line for each"
                        + " date.");
        assertThat(faults("/place/forecast", forecast("2027-05-01", "2027-05-04")))
                .extracting(Fault::line)
                .containsExactly("/place/forecast/1/date [2027-05-04] comes after a gap in the forecast. Add"
                        + " 2027-05-03, or leave out the days behind the gap.");
    }

    private static String forecast(String... dates) {
        return "["
                + String.join(",", List.of(dates).stream().map(DAY::formatted).toList()) + "]";
    }

    @Test
    void the_kind_of_a_battery_needs_a_battery() {
        assertThat(Document.sound()
                        .with("/power/capacity", "\"0 Wh\"")
                        .with("/power/kind", "\"lithium\"")
                        .faults())
                .extracting(Fault::pointer)
                .containsExactly("/power/capacity");
        assertThat(faults("/power/capacity", "\"0 Wh\"")).isEmpty();
    }

    @Test
    void a_tool_that_draws_nothing_needs_no_minutes() {
        assertThat(Document.sound()
                        .without("/tools/0/draw")
                        .with("/stages/1/toolTimes", "[{\"tool\": \"mixer\", \"minutes\": 5}]")
                        .faults())
                .extracting(Fault::pointer, Fault::problem)
                .containsExactly(tuple("/stages/1/toolTimes/0/tool", "draws no power, so its minutes say nothing"));
    }

    @Test
    void a_place_past_the_polar_circle_is_no_fault() {
        assertThat(Document.sound()
                        .with("/place/latitude", "78.2")
                        .with("/place/climate", MONTHS)
                        .with("/stages/1/conditions", "{\"dryDay\": true, \"leastOdds\": 60}")
                        .faults())
                .isEmpty();
    }

    @Test
    void what_an_older_file_leaves_out_has_its_usual_value() {
        Homestead homestead = ((Reading.Accepted) Document.sound().read()).homestead();
        PowerKit power = requireNonNull(homestead.power());
        assertThat(power.betweenTrips()).isEqualTo(BetweenTrips.CHARGED_AT_HOME);
        assertThat(requireNonNull(power.generator()).fromHour()).isEqualTo(8);
        assertThat(homestead.tools().getFirst().dutyPercent()).isEqualTo(100);
        assertThat(homestead.stages()).noneMatch(s -> s.headLamp());
        assertThat(homestead.openDates().routine()).isNull();
        assertThat(homestead.openDates().day()).isEqualTo(DayRoutine.USUAL);
        Homestead more = ((Reading.Accepted) Document.sound()
                        .with("/openDates/routine", "{}")
                        .with("/water", "{\"tank\": \"1 m3\", \"now\": \"1 m3\"}")
                        .read())
                .homestead();
        assertThat(more.openDates().routine()).isEqualTo(DayRoutine.USUAL);
        WaterStore water = requireNonNull(more.water());
        assertThat(water.can().value()).isEqualByComparingTo(new BigDecimal("0.02"));
        assertThat(water.catchPercent()).isEqualTo(80);
    }
}
