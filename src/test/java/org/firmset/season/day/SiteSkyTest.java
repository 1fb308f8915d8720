package org.firmset.season.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.firmset.homestead.DayRoutine;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Hours;
import org.firmset.measure.UnitSystem;
import org.firmset.season.SunnySite;
import org.firmset.trade.climate.Light;
import org.firmset.trade.power.SunCurve;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SiteSkyTest {
    private static final LocalDate DAY = LocalDate.of(2027, 6, 12);
    private static final SiteSky SKY = SiteSky.of(SunnySite.make());

    @Nested
    class LightToWorkBy {
        private static final LocalDate WINTER = LocalDate.of(2015, 12, 1);

        private static Light.Hours light(int fromHour, int fromMinute, LocalDate until, int toHour, int toMinute) {
            return new Light.Hours(
                    ZonedDateTime.of(WINTER, LocalTime.of(fromHour, fromMinute), ZoneOffset.UTC),
                    ZonedDateTime.of(until, LocalTime.of(toHour, toMinute), ZoneOffset.UTC));
        }

        @Test
        void begins_at_first_light_when_that_is_later_than_people_rise() {
            // first light in London is at 07:04 by the almanac (DL-04); 07:04 to 16:34 is 9 h 30, less an hour 8 h 30
            UsableLight usable = UsableLight.of(light(7, 4, WINTER, 16, 34), new DayRoutine(6, Hours.ofWhole(1)));
            assertThat(usable)
                    .isEqualTo(new UsableLight(LocalTime.of(7, 4), Duration.ofMinutes(570), Duration.ofMinutes(510)));
        }

        @Test
        void begins_when_people_rise_when_that_is_later_than_first_light() {
            UsableLight usable = UsableLight.of(light(4, 50, WINTER, 21, 0), DayRoutine.USUAL);
            assertThat(usable.from()).isEqualTo(LocalTime.of(7, 0));
            assertThat(usable.usable()).isEqualTo(Duration.ofHours(14));
        }

        @Test
        void that_lasts_past_midnight_ends_with_the_date() {
            UsableLight usable = UsableLight.of(light(2, 0, WINTER.plusDays(1), 0, 40), DayRoutine.USUAL);
            assertThat(usable.clock()).isEqualTo(Duration.ofHours(17));
        }

        @Test
        void is_nothing_in_the_polar_night_and_all_the_day_in_the_polar_summer() {
            DayRoutine routine = new DayRoutine(8, Hours.ofWhole(2));
            assertThat(UsableLight.of(new Light.Never(), routine).usable()).isZero();
            assertThat(UsableLight.of(new Light.Always(), routine).usable()).isEqualTo(Duration.ofHours(14));
        }

        @Test
        void of_a_homestead_is_that_of_its_place_with_its_routine() {
            Light.Hours civil = (Light.Hours) SKY.civil(DAY);
            UsableLight usable = SKY.usable(DAY);
            assertThat(usable.from()).isEqualTo(LocalTime.of(7, 0));
            Duration toDusk = Duration.between(DAY.atTime(7, 0), civil.to().toLocalDateTime());
            assertThat(usable.usable()).isEqualTo(Duration.ofMinutes(toDusk.toMinutes() - 90));
        }
    }

    @Nested
    class Sun {
        @Test
        void of_the_mean_is_what_the_normals_say_less_the_losses() {
            // 5 h of full sun at 75 % are 3.75 h; tilt and direction only shape the day
            assertThat(SKY.sunHours(DAY)).isCloseTo(5, within(1e-9));
            assertThat(SKY.curve(DAY, 60).hours()).isCloseTo(3.75, within(1e-9));
            assertThat(SKY.curve(DAY, 15).hours()).isCloseTo(3.75, within(1e-9));
        }

        @Test
        void of_a_poor_day_is_counted_on_when_the_homestead_says_so() {
            // dry days fall about 5 h by 30 % of it: the 20th percentile lies 0.8416 deviations lower, 5 - 0.8416 x 1.5
            SiteSky careful = SiteSky.of(SunnySite.with(", \"poorDayPercent\": 20", ""));
            assertThat(careful.sunHours(DAY)).isCloseTo(3.7376, within(1e-3));
            assertThat(careful.curve(DAY, 60).hours()).isCloseTo(3.7376 * 0.75, within(1e-3));
            assertThat(careful.meanSunHours(DAY)).isCloseTo(5, within(1e-9));
        }

        @Test
        void of_a_forecast_goes_before_the_normals() {
            SiteSky forecast = SiteSky.of(SunnySite.with("", """
                    , "forecast": [{"date": "2027-06-12", "high": "11 degC", "low": "9 degC", "wetPercent": 80,
                      "sunHours": 1.5}]"""));
            assertThat(forecast.sunHours(DAY)).isEqualTo(1.5);
            assertThat(forecast.airCelsius(DAY)).isEqualTo(10);
            assertThat(forecast.sunHours(DAY.plusDays(1))).isCloseTo(5, within(1e-9));
        }

        @Test
        void behind_hills_all_around_leaves_what_the_sky_gives() {
            SiteSky valley = SiteSky.of(SunnySite.with(
                    "", ", \"horizon\": [{\"fromDegrees\": 0, \"toDegrees\": 360, \"elevationDegrees\": 90}]"));
            assertThat(valley.curve(DAY, 60).hours()).isBetween(0.1, 0.8);
        }

        @Test
        void looks_to_the_equator_where_nothing_else_is_said() {
            // a panel to the west has more of its sun after noon than one to the south
            SiteSky west = SiteSky.of(SunnySite.with(", \"panelDirection\": 270", ""));
            assertThat(afternoon(west)).isGreaterThan(afternoon(SKY) + 0.3);
            assertThat(afternoon(SKY)).isCloseTo(3.75 / 2, within(0.25));
        }

        private static double afternoon(SiteSky sky) {
            // the sun stands highest at about one o'clock of summer time
            SunCurve curve = sky.curve(DAY, 60);
            double sum = 0;
            for (int hour = 13; hour < 24; hour++) {
                sum += curve.wattsPerWatt(hour);
            }
            return sum;
        }

        @Test
        void is_none_where_nothing_is_known_of_the_climate() {
            SiteSky unknown = SiteSky.of(SeedHomesteads.empty("Field", UnitSystem.METRIC, DAY));
            assertThat(unknown.sunHours(DAY)).isZero();
            assertThat(unknown.curve(DAY, 60).hours()).isZero();
            assertThat(unknown.airCelsius(DAY)).isEqualTo(20);
            assertThat(unknown.usable(DAY).usable()).isPositive();
        }

        @Test
        void of_a_date_is_reckoned_once() {
            assertThat(SKY.curve(DAY, 15)).isSameAs(SKY.curve(DAY, 15)).isNotSameAs(SKY.curve(DAY, 60));
        }
    }
}
