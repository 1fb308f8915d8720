package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.cure.Given.number;
import static org.firmset.trade.cure.Given.texts;
import static org.firmset.trade.cure.Given.weight;
import static org.firmset.trade.trace.Results.line;
import static org.firmset.trade.trace.Results.word;

import java.time.LocalDate;
import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Finding.Weight;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Term;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PourWeatherTest {
    private static final double KMH = 3.6;

    private final Given.Day day = new Given.Day();

    @Test
    void a_mild_dry_day_is_a_go() {
        day.night = "12 degC";
        Worksheet sheet = day.work();
        assertThat(word(sheet, "verdict")).isEqualTo("go");
        assertThat(sheet.findings()).allMatch(f -> f.weight() == Weight.NOTE);
        assertThat(weight(sheet, "Limits of specifications in short")).isEqualTo(Weight.NOTE);
        assertThat(weight(sheet, "No rain is reckoned with")).isEqualTo(Weight.NOTE);
    }

    @Test
    void nights_that_are_not_known_are_asked_for() {
        String asked = "No night temperature is given";
        assertThat(weight(day.work(), asked)).isEqualTo(Weight.WARNING);
        day.night = "12 degC";
        assertThat(day.work().findings()).noneMatch(f -> f.text().startsWith(asked));
    }

    @Test
    void concrete_that_nobody_measured_is_as_warm_as_the_air_and_in_heat_people_count_too() {
        day.concrete = null;
        day.now = "38 degC";
        Worksheet hot = day.work();
        assertThat(word(hot, "verdict")).startsWith("no-go: the concrete is too hot");
        assertThat(weight(hot, "The temperature of the fresh concrete is not given"))
                .isEqualTo(Weight.NOTE);
        assertThat(weight(hot, "Hot for people too")).isEqualTo(Weight.WARNING);
        day.now = "31 degC";
        assertThat(day.work().findings()).noneMatch(f -> f.text().startsWith("Hot for people"));
    }

    @Test
    void the_hardest_verdict_stands_first_with_all_reasons() {
        day.concrete = "36 degC";
        day.wind = "60 km/h";
        Worksheet sheet = day.work();
        assertThat(word(sheet, "verdict")).isEqualTo("no-go: the concrete is too hot; the surface dries too fast");
        assertThat(weight(sheet, "The concrete is too hot. Over 35 °C (95 °F)")).isEqualTo(Weight.WARNING);
        assertThat(weight(sheet, "The surface dries too fast. Break the wind")).isEqualTo(Weight.WARNING);
    }

    @Test
    void no_go_comes_before_protection_however_they_were_found() {
        day.wind = "60 km/h";
        day.concrete = "25 degC";
        day.rain = "0";
        assertThat(word(day.work(), "verdict"))
                .isEqualTo("no-go: rain comes before it is finished; the surface dries too fast");
    }

    @Test
    void lines_for_concrete() {
        day.date = LocalDate.of(2027, 5, 1);
        day.wanted = "20 degC";
        assertThat(day.work().lines())
                .extracting(Line::key)
                .containsExactly(
                        "verdict",
                        "daily-mean",
                        "evaporation",
                        "evaporation-us",
                        "evaporation-limit",
                        "wind-limit",
                        "greatest-concrete",
                        "least-concrete",
                        "protection-days",
                        "protected-until",
                        "freezing-strength",
                        "frost-safe-hours",
                        "frost-safe-hours-held",
                        "rain-hours",
                        "mixing-water");
    }

    @Nested
    class Drying {
        @Test
        void evaporation_by_both_forms() {
            Worksheet sheet = day.work();
            assertThat(number(sheet, "evaporation")).isCloseTo(0.31155, within(0.00001));
            assertThat(number(sheet, "evaporation-us")).isCloseTo(0.06645, within(0.00001));
            assertThat(number(sheet, "evaporation-limit")).isEqualTo(1);
            assertThat(number(sheet, "wind-limit") * KMH).isCloseTo(40.9367, within(0.0001));
            assertThat(line(sheet, "evaporation").terms())
                    .extracting(Term::symbol)
                    .containsExactly("Tc", "Ta", "r", "V");
            assertThat(number(line(sheet, "evaporation").terms().get(3).amount()) * KMH)
                    .isCloseTo(10, within(1e-6));
            assertThat(line(sheet, "evaporation").source()).isSameAs(Sources.EVAPORATION);
            assertThat(line(sheet, "evaporation-us").source()).isSameAs(Sources.EVAPORATION_US);
        }

        @Test
        void over_the_limit_the_surface_needs_protection() {
            day.wind = "40.93 km/h";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
            day.wind = "40.94 km/h";
            assertThat(word(day.work(), "verdict")).isEqualTo("not without protection: the surface dries too fast");
        }

        @Test
        void where_water_condenses_nothing_evaporates_and_no_wind_is_too_much() {
            day.concrete = "5 degC";
            day.now = "25 degC";
            day.humidity = "100";
            Worksheet sheet = day.work();
            assertThat(number(sheet, "evaporation")).isZero();
            assertThat(number(sheet, "evaporation-us")).isZero();
            assertThat(sheet.line("wind-limit")).isEmpty();
        }

        @Test
        void beyond_the_chart_it_is_stretched() {
            day.wind = "41 km/h";
            assertThat(weight(day.work(), "Evaporation is stretched beyond")).isEqualTo(Weight.WARNING);
            day.wind = "40 km/h";
            assertThat(texts(day.work())).doesNotContain("stretched beyond");
        }

        @Test
        void hot_weather_as_the_specification_has_it() {
            day.now = "80 degF";
            day.concrete = "90 degF";
            day.wind = "20 km/h";
            assertThat(weight(day.work(), "Hot weather as ACI 305.1 has it")).isEqualTo(Weight.WARNING);
            day.now = "79 degF";
            assertThat(texts(day.work())).doesNotContain("Hot weather as");
            day.now = "80 degF";
            day.wind = "5 km/h";
            assertThat(texts(day.work())).doesNotContain("Hot weather as");
        }

        @Test
        void concrete_over_thirty_five_degrees_is_sent_back() {
            day.concrete = "95 degF";
            day.wind = "0 km/h";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
            day.concrete = "95.1 degF";
            assertThat(word(day.work(), "verdict")).isEqualTo("no-go: the concrete is too hot");
            assertThat(number(day.work(), "greatest-concrete")).isEqualTo(35);
        }

        @Test
        void a_table_and_a_curve_by_wind() {
            Worksheet sheet = day.work();
            List<List<Amount>> rows = sheet.tables().getFirst().rows();
            assertThat(rows).hasSize(9);
            assertThat(number(rows.get(2).get(0)) * KMH).isCloseTo(10, within(1e-6));
            assertThat(number(rows.get(2).get(1))).isCloseTo(0.31155, within(0.00001));
            Curve curve = sheet.curves().getFirst();
            assertThat(curve.points())
                    .extracting(Curve.Point::x)
                    .startsWith(0.0, 5.0, 10.0)
                    .endsWith(35.0, 40.0);
            assertThat(curve.points().get(2).y()).isCloseTo(0.31155, within(0.00001));
            assertThat(curve.marks().getFirst().x()).isCloseTo(10, within(1e-6));
            assertThat(curve.marks().getFirst().y()).isCloseTo(0.31155, within(0.00001));
        }

        @ParameterizedTest(name = "{0}: to {1} km/h")
        @CsvSource(textBlock = """
                39 km/h, 40
                41 km/h, 45
                98 km/h, 100
                """)
        void the_curve_reaches_the_wind_of_the_day(String wind, double last) {
            day.wind = wind;
            assertThat(day.work().curves().getFirst().points().getLast().x()).isEqualTo(last);
        }
    }

    @Nested
    class Cold {
        @Test
        void the_mean_of_high_and_low() {
            day.high = "24 degC";
            day.low = "10 degC";
            assertThat(number(day.work(), "daily-mean")).isEqualTo(17);
            day.high = null;
            assertThat(number(day.work(), "daily-mean")).isEqualTo(15);
        }

        @ParameterizedTest(name = "day {0}, nights {1}: {2}")
        @CsvSource(textBlock = """
                40 degF,   40 degF,   go
                39.9 degF, 50 degF,   not without protection: it gets cold while the concrete is young
                50 degF,   39.9 degF, not without protection: it gets cold while the concrete is young
                """)
        void any_cold_hour_asks_for_protection(String low, String night, String verdict) {
            day.low = low;
            day.night = night;
            assertThat(word(day.work(), "verdict")).isEqualTo(verdict);
        }

        @Test
        void nights_are_as_cold_as_the_day_when_nothing_else_is_known() {
            day.low = "39.9 degF";
            assertThat(word(day.work(), "verdict")).startsWith("not without protection");
            assertThat(texts(day.work()))
                    .contains("Hold it at 12.8 °C (55 °F) or more for 3 days with insulation")
                    .doesNotContain("frost while");
        }

        @Test
        void concrete_must_be_warm_when_it_is_cold() {
            day.low = "4 degC";
            day.concrete = "54.9 degF";
            assertThat(word(day.work(), "verdict"))
                    .isEqualTo("no-go: the concrete is too cold; it gets cold while the concrete is young");
            assertThat(texts(day.work()))
                    .contains("Parts like this are placed at 12.8 °C (55 °F) or more in cold weather.");
            day.concrete = "55 degF";
            assertThat(word(day.work(), "verdict")).startsWith("not without protection");
            day.concrete = "50 degF";
            day.dimension = "12 in";
            assertThat(word(day.work(), "verdict")).startsWith("not without protection");
        }

        @Test
        void cold_concrete_is_no_matter_on_a_mild_day() {
            day.concrete = "5 degC";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
        }

        @Test
        void frost_ruins_young_concrete() {
            day.low = "0 degC";
            assertThat(texts(day.work())).doesNotContain("frost while");
            day.low = "-0.1 degC";
            assertThat(word(day.work(), "verdict"))
                    .endsWith("it gets cold while the concrete is young; there is frost while the concrete is young");
        }

        @Test
        void days_of_protection_and_their_last_date() {
            day.date = LocalDate.of(2027, 11, 5);
            Worksheet sheet = day.work();
            assertThat(number(sheet, "protection-days")).isEqualTo(3);
            assertThat(line(sheet, "protected-until").amount()).isEqualTo(Amount.on(LocalDate.of(2027, 11, 8)));
            day.exposure = Exposure.LOADED;
            day.accelerated = true;
            assertThat(number(day.work(), "protection-days")).isEqualTo(4);
            day.accelerated = false;
            day.cement = Cement.RAPID;
            assertThat(number(day.work(), "protection-days")).isEqualTo(4);
        }

        @Test
        void without_a_date_there_is_no_last_one() {
            assertThat(day.work().line("protected-until")).isEmpty();
        }

        @Test
        void hours_until_frost_is_survived() {
            day.low = "0 degC";
            Worksheet sheet = day.work();
            assertThat(number(sheet, "freezing-strength")).isEqualTo(3_500_000);
            assertThat(number(sheet, "frost-safe-hours")).isCloseTo(17.1619, within(0.0001));
            assertThat(number(sheet, "frost-safe-hours-held")).isCloseTo(14.9589, within(0.0001));
            assertThat(number(line(sheet, "frost-safe-hours").terms().getFirst().amount()))
                    .isEqualTo(0.175);
            assertThat(line(sheet, "frost-safe-hours").caution()).contains("take twice as long");
        }

        @Test
        void in_frost_concrete_gains_nothing() {
            day.low = "-20 degC";
            assertThat(day.work().line("frost-safe-hours")).isPresent();
            assertThat(texts(day.work())).doesNotContain("gains nothing unless");
            day.low = "-20.1 degC";
            Worksheet sheet = day.work();
            assertThat(sheet.line("frost-safe-hours")).isEmpty();
            assertThat(weight(sheet, "At a daily mean under 0 °C (32 °F) concrete gains nothing"))
                    .isEqualTo(Weight.WARNING);
        }

        @ParameterizedTest(name = "{0} days before, {1}: {2}")
        @CsvSource(textBlock = """
                3, 39.9 degF, true
                2, 39.9 degF, false
                3, 40 degF,   false
                """)
        void a_cold_spell_by_the_older_definition(int before, String now, boolean spell) {
            day.now = now;
            day.coldDaysBefore = before;
            assertThat(texts(day.work()).contains("By its older definition this is cold weather"))
                    .isEqualTo(spell);
        }
    }

    @Nested
    class Rain {
        @ParameterizedTest(name = "{0} h at {1}: {2}")
        @CsvSource(textBlock = """
                0,    20 degC, no-go: rain comes before it is finished
                0.1,  20 degC, not without protection: rain comes in the first hours
                3.9,  20 degC, not without protection: rain comes in the first hours
                4,    20 degC, not without protection: rain comes while it is soft
                7.9,  20 degC, not without protection: rain comes while it is soft
                8,    20 degC, go
                8,    30 degC, go
                7.9,  30 degC, not without protection: rain comes while it is soft
                6.4,  10 degC, not without protection: rain comes in the first hours
                6.5,  10 degC, not without protection: rain comes while it is soft
                12.9, 10 degC, not without protection: rain comes while it is soft
                13,   10 degC, go
                """)
        void rain_does_the_most_harm_in_the_first_hours(String hours, String now, String verdict) {
            day.rain = hours;
            day.now = now;
            assertThat(word(day.work(), "verdict")).isEqualTo(verdict);
            assertThat(texts(day.work())).doesNotContain("No rain is reckoned with");
        }

        @Test
        void hours_until_it_does_no_more_harm() {
            assertThat(number(day.work(), "rain-hours")).isEqualTo(8);
            day.now = "10 degC";
            assertThat(number(day.work(), "rain-hours")).isCloseTo(12.9596, within(0.0001));
            assertThat(line(day.work(), "rain-hours").source().words())
                    .isEqualTo("the first 4 to 8 h (common practice, no source)");
            day.now = "-1 degC";
            assertThat(day.work().line("rain-hours")).isEmpty();
        }
    }

    @Nested
    class Mixing {
        @Test
        void water_for_the_concrete_that_is_wanted() {
            day.now = "5 degC";
            day.wanted = "15 degC";
            // 15 + 0.22 x 2200 / 160 x 10
            Worksheet sheet = day.work();
            assertThat(number(sheet, "mixing-water")).isCloseTo(45.25, within(1e-9));
            assertThat(line(sheet, "mixing-water").terms())
                    .extracting(Term::symbol)
                    .containsExactly("T", "S", "Ts", "W");
            assertThat(texts(sheet)).doesNotContain("Water over 60").doesNotContain("No water is that");
            day.solidsTemperature = "10 degC";
            assertThat(number(day.work(), "mixing-water")).isCloseTo(30.125, within(1e-9));
        }

        @Test
        void none_is_worked_out_when_none_is_wanted() {
            day.solidsTemperature = "-5 degC";
            assertThat(day.work().line("mixing-water")).isEmpty();
            assertThat(texts(day.work())).doesNotContain("Ice in the aggregate");
        }

        @ParameterizedTest(name = "solids of 484 kg, {0}: {1}")
        @CsvSource(textBlock = """
                0 degC,    false, false
                -0.1 degC, true,  false
                -20 degC,  true,  false
                -20.1 degC, true, true
                """)
        void water_that_is_too_hot(String solids, boolean hot, boolean boiling) {
            // as much heat in the solids as in twice the water: Tw = 3 T - 2 Ts
            day.solids = "1000 kg";
            day.water = "110 kg";
            day.wanted = "20 degC";
            day.solidsTemperature = solids;
            Worksheet sheet = day.work();
            assertThat(weight(sheet, "Water over 60 °C (140 °F) scalds") == Weight.WARNING)
                    .isEqualTo(hot);
            assertThat(weight(sheet, "No water is that hot;") == Weight.WARNING).isEqualTo(boiling);
            assertThat(weight(sheet, "Ice in the aggregate") == Weight.WARNING).isEqualTo(!solids.equals("0 degC"));
        }

        @Test
        void what_boiling_and_icy_water_give() {
            day.solids = "1000 kg";
            day.water = "110 kg";
            day.wanted = "30 degC";
            day.solidsTemperature = "-20 degC";
            assertThat(texts(day.work())).contains("with boiling water the concrete would have 20 °C (68 °F).");
            day.solidsTemperature = "60 degC";
            assertThat(texts(day.work())).contains("with ice-cold water the concrete would have 40 °C (104 °F).");
            day.solidsTemperature = "45 degC";
            assertThat(texts(day.work())).doesNotContain("No water is that cold");
        }
    }

    @Nested
    class Masonry {
        @Test
        void lines_for_masonry() {
            day.work = PourWork.MASONRY;
            Worksheet sheet = day.work();
            assertThat(sheet.lines())
                    .extracting(Line::key)
                    .containsExactly(
                            "verdict", "daily-mean", "cold-band", "cold-band-after", "mortar-hours", "grout-hours");
            assertThat(number(sheet, "mortar-hours")).isEqualTo(24);
            assertThat(number(sheet, "grout-hours")).isEqualTo(48);
            assertThat(word(sheet, "cold-band")).isEqualTo("none: 4.4 °C (40 °F) or more");
            assertThat(weight(sheet, "Cover the tops of walls each night")).isEqualTo(Weight.NOTE);
            assertThat(sheet.tables()).isEmpty();
            assertThat(sheet.curves()).isEmpty();
        }

        @Test
        void evaporation_is_no_matter_there() {
            day.work = PourWork.MASONRY;
            day.wind = "60 km/h";
            day.low = "4.5 degC";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
            assertThat(texts(day.work())).doesNotContain("stretched beyond");
        }

        @ParameterizedTest(name = "{0} in wind of {1}: {2}")
        @CsvSource(textBlock = """
                100 degF,   0 mph, go
                100.1 degF, 0 mph, not without protection: it is hot for masonry
                91 degF,    8 mph, go
                91 degF,    9 mph, not without protection: it is hot for masonry
                """)
        void heat_and_wind(String now, String wind, String verdict) {
            day.work = PourWork.MASONRY;
            day.now = now;
            day.wind = wind;
            assertThat(word(day.work(), "verdict")).isEqualTo(verdict);
        }

        @Test
        void cold_work_and_a_cold_mean_are_held_apart() {
            day.work = PourWork.MASONRY;
            day.now = "45 degF";
            day.low = "25 degF";
            Worksheet sheet = day.work();
            assertThat(word(sheet, "verdict")).isEqualTo("not without protection: the daily mean is cold");
            assertThat(word(sheet, "cold-band-after")).isEqualTo("0 to 4.4 °C (32 to 40 °F)");
            assertThat(texts(sheet))
                    .contains("For 24 hours, and for 48 with core fill: cover the work so that it stays dry.");
        }

        @Test
        void cold_work_under_a_mild_mean() {
            day.work = PourWork.MASONRY;
            day.now = "35 degF";
            day.high = "60 degF";
            day.low = "30 degF";
            assertThat(word(day.work(), "verdict")).isEqualTo("not without protection: it is cold for masonry");
            assertThat(texts(day.work())).contains("While working: lay no icy units;");
        }

        @ParameterizedTest(name = "{0}, core fill of {1}: {2}")
        @CsvSource(textBlock = """
                32.1 degF, 60 degF,    not without protection: it is cold for masonry; the daily mean is cold
                32 degF,   70 degF,    not without protection: it is cold for masonry; the daily mean is cold
                32 degF,   69.9 degF,  no-go: the core fill is too cold; it is cold for masonry; the daily mean is cold
                32 degF,   120 degF,   not without protection: it is cold for masonry; the daily mean is cold
                32 degF,   120.1 degF, no-go: the core fill is too hot; it is cold for masonry; the daily mean is cold
                """)
        void core_fill_must_be_warm_in_frost(String now, String grout, String verdict) {
            day.work = PourWork.MASONRY;
            day.now = now;
            day.concrete = grout;
            assertThat(word(day.work(), "verdict")).isEqualTo(verdict);
        }

        @Test
        void windbreaks_in_a_bitter_wind() {
            day.work = PourWork.MASONRY;
            day.now = "22 degF";
            day.concrete = "80 degF";
            day.wind = "15 mph";
            assertThat(word(day.work(), "verdict")).doesNotContain("wind");
            day.wind = "16 mph";
            assertThat(word(day.work(), "verdict")).contains("the wind is too cold");
        }
    }

    @Nested
    class Refusals {
        @Test
        void a_high_under_the_temperature_now() {
            day.high = "19.9 degC";
            assertRefused("airHigh [19.9 degC] is under the temperature while placing. Enter more.");
            day.high = "20 degC";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
        }

        @Test
        void a_low_over_the_temperature_now() {
            day.low = "20.1 degC";
            assertRefused("airLow [20.1 degC] is over the temperature while placing. Enter less.");
            day.low = "20 degC";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
        }

        @Test
        void more_water_than_solids() {
            day.solids = "100 kg";
            day.water = "101 kg";
            assertRefused("water [101 kg] is more than the solids. Enter less water.");
            day.water = "100 kg";
            assertThat(word(day.work(), "verdict")).isEqualTo("go");
        }

        private void assertRefused(String message) {
            assertThatThrownBy(day::work).isInstanceOf(Refusal.class).hasMessage(message);
        }

        @ParameterizedTest
        @ValueSource(strings = {"-17.1 degC", "50.1 degC"})
        void air_that_nobody_pours_in(String now) {
            day.now = now;
            assertThatThrownBy(day::work)
                    .isInstanceOf(Refusal.class)
                    .hasMessageEndingWith("Enter from -17 degC to 50 degC.");
        }
    }
}
