package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.firmset.trade.climate.SiteDayOdds.About;
import org.firmset.trade.climate.SiteDayOdds.Part;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 1);
    private static final YearClimate EVEN = year(new MonthClimate(20, 4, 7, 5, 40.0, 4.0));

    private static YearClimate year(MonthClimate month) {
        return new YearClimate(Collections.nCopies(12, month));
    }

    private static Weather weather(ForecastDay... days) {
        return new Weather(EVEN, 0.4, new Forecast(List.of(days)));
    }

    private static ForecastDay forecast(LocalDate date, int rainPercent) {
        return new ForecastDay(date, 15, 1, rainPercent, 8.0, null);
    }

    @ParameterizedTest(name = "{0} deviations from the mean: {1} (table of the normal distribution)")
    @CsvSource({"-3, 0.0013499", "-1, 0.1586553", "0, 0.5", "1, 0.8413447", "1.96, 0.9750021", "40, 1", "-40, 0"})
    void the_bell_agrees_with_its_table(double z, double odds) {
        assertThat(new Bell(10, 2).under(10 + 2 * z)).isCloseTo(odds, within(1e-7));
    }

    @Test
    void a_day_is_as_the_climate_has_it_where_nothing_is_forecast() {
        WeatherDay day = weather().on(DAY);
        assertThat(day.high().mean()).isCloseTo(20, within(1e-9));
        assertThat(day.low().deviation()).isEqualTo(4);
        assertThat(day.wetOdds()).isCloseTo(7 / 31.0, within(0.01));
        assertThat(day.sunHours()).isCloseTo(5, within(1e-9));
        assertThat(day.forecast()).isFalse();
    }

    @Test
    void a_low_one_deviation_over_freezing_freezes_every_sixth_night() {
        assertThat(weather().on(DAY).frostOdds()).isCloseTo(0.1586553, within(1e-6));
    }

    @Test
    void a_forecast_overrides_its_days_only_and_rain_takes_half_the_sun_of_a_dry_day() {
        Weather weather = weather(forecast(DAY, 60));
        WeatherDay day = weather.on(DAY);
        assertThat(day.forecast()).isTrue();
        assertThat(day.high()).isEqualTo(new Bell(15, 2));
        assertThat(day.low()).isEqualTo(new Bell(1, 2));
        assertThat(day.wetOdds()).isEqualTo(0.6);
        double dryHours = 5 / (1 - weather().on(DAY).wetOdds() / 2);
        assertThat(day.sunHours()).isCloseTo(dryHours * (1 - 0.6 / 2), within(1e-9));
        assertThat(day.poorSunHours(20)).isBetween(0.5 * day.sunHours(), day.sunHours());
        assertThat(weather.on(DAY.plusDays(1)).forecast()).isFalse();
    }

    @Test
    void a_run_of_dry_days_takes_forecast_and_climate_by_the_chain() {
        Weather weather = weather(forecast(DAY, 10), forecast(DAY.plusDays(1), 50));
        double third = weather.on(DAY.plusDays(2)).wetOdds();
        assertThat(weather.dryInARow(DAY, 3)).isCloseTo(0.9 * (1 - 0.5 * 0.6) * (1 - third * 0.6), within(1e-12));
    }

    @Test
    void without_a_forecast_a_run_is_the_run_of_the_climates_wet_days() {
        assertThat(weather().dryInARow(DAY, 4)).isCloseTo(weather().wetDays().dryInARow(DAY, 4), within(1e-12));
    }

    @Test
    void usual_wind_is_under_its_mean_on_54_days_in_100_by_rayleigh() {
        assertThat(weather().on(DAY).windUnder(4).orElseThrow()).isCloseTo(1 - Math.exp(-Math.PI / 4), within(1e-9));
        assertThat(weather(forecast(DAY, 0)).on(DAY).windUnder(8).orElseThrow()).isCloseTo(0.5, within(1e-6));
        assertThat(weather(forecast(DAY, 0)).on(DAY).windUnder(10).orElseThrow())
                .isCloseTo(0.8413447, within(1e-6));
    }

    @Nested
    class SiteDays {
        @Test
        void without_conditions_any_day_will_do() {
            SiteDayOdds odds = SiteDayOdds.on(weather().on(DAY), Conditions.ANY);
            assertThat(odds.parts()).isEmpty();
            assertThat(odds.odds()).isEqualTo(1);
        }

        @Test
        void all_conditions_are_multiplied_and_each_is_told() {
            Conditions conditions = Conditions.ANY
                    .onlyDry()
                    .highOver(16)
                    .highUnder(24)
                    .notFrozen()
                    .windUnder(4);
            SiteDayOdds odds = SiteDayOdds.on(weather().on(DAY), conditions);
            assertThat(odds.parts())
                    .extracting(Part::about)
                    .containsExactly(About.DRY, About.HIGH, About.LOW, About.WIND);
            double dry = 1 - weather().on(DAY).wetOdds();
            double wind = 1 - Math.exp(-Math.PI / 4);
            assertThat(odds.odds()).isCloseTo(dry * (0.8413447 - 0.1586553) * 0.8413447 * wind, within(1e-6));
        }

        @Test
        void two_limits_on_one_quantity_are_one_part_not_two() {
            Conditions both = Conditions.ANY.lowOver(2).notFrozen();
            assertThat(both.lowOverCelsius()).isEqualTo(2);
            assertThat(SiteDayOdds.on(weather().on(DAY), both).parts()).hasSize(1);
        }

        @Test
        void unknown_wind_is_said_to_be_unknown() {
            Weather weather = new Weather(year(new MonthClimate(20, 4, 7, 5, null, null)), 0.4, Forecast.NONE);
            assertThat(SiteDayOdds.on(weather.on(DAY), Conditions.ANY.windUnder(5))
                            .parts())
                    .containsExactly(new Part(About.WIND, 1, false));
        }

        @Test
        void days_in_a_row_must_all_do() {
            Conditions conditions = Conditions.ANY.onlyDry().notFrozen();
            SiteDayOdds odds = SiteDayOdds.inARow(weather(), DAY, 2, conditions);
            assertThat(odds.odds())
                    .isCloseTo(weather().dryInARow(DAY, 2) * 0.8413447 * 0.8413447, within(1e-6))
                    .isLessThan(SiteDayOdds.on(weather().on(DAY), conditions).odds());
        }

        @Test
        void narrower_conditions_never_raise_the_odds() {
            Conditions wide = Conditions.ANY.highOver(10).highUnder(30);
            double last = 1;
            for (Conditions c : List.of(
                    wide,
                    wide.highOver(15),
                    wide.highOver(15).lowOver(-5),
                    wide.highOver(15).lowOver(3).onlyDry())) {
                double odds = SiteDayOdds.on(weather().on(DAY), c).odds();
                assertThat(odds).isBetween(0.0, last);
                last = odds;
            }
        }

        @Test
        void refuses_a_high_that_must_be_over_more_than_under() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Conditions.ANY.highUnder(10).highOver(20));
        }
    }

    @Nested
    class Forecasts {
        @Test
        void gaps_and_doubles_are_faults_with_the_line_in_the_list() {
            List<ForecastDay> days = List.of(
                    forecast(DAY.plusDays(4), 0), forecast(DAY, 0), forecast(DAY.plusDays(1), 0), forecast(DAY, 10));
            assertThat(Forecast.faults(days))
                    .extracting(TableFault::text)
                    .containsExactly(
                            "Line 4, date [2027-05-01] stands there twice. Keep one line for each date.",
                            "Line 1, date [2027-05-05] comes after a gap. Add 2027-05-03 to 2027-05-04 or leave out the days behind it.");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Forecast(days))
                    .withMessageStartingWith("Line 4, date");
        }

        @Test
        void days_in_any_order_without_a_gap_are_fine() {
            Forecast forecast = new Forecast(List.of(forecast(DAY.plusDays(1), 0), forecast(DAY, 5)));
            assertThat(forecast.days()).extracting(ForecastDay::date).containsExactly(DAY, DAY.plusDays(1));
            assertThat(forecast.on(DAY)).contains(forecast(DAY, 5));
            assertThat(forecast.on(DAY.minusDays(1))).isEmpty();
        }

        @Test
        void refuses_a_low_over_the_high_and_chances_beyond_100() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new ForecastDay(DAY, 5, 6, 0, null, null))
                    .withMessageStartingWith("lowCelsius [6.0]");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new ForecastDay(DAY, 5, 4, 101, null, null))
                    .withMessageStartingWith("rainPercent [101.0]");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new ForecastDay(DAY, 5, 4, 10, -1.0, null))
                    .withMessageStartingWith("windMetresPerSecond");
        }
    }
}
