package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunlightTest {
    private static final Coordinates TROMSO = new Coordinates(69.65, 18.96, ZoneId.of("Europe/Oslo"));

    @ParameterizedTest(name = "London (a public almanac page), {0}: {1} to {2}, twilight {3} to {4}")
    @CsvSource(textBlock = """
            2015-12-01, 07:43, 15:55, 07:04, 16:34
            2015-12-02, 07:45, 15:54, 07:05, 16:34
            2015-12-03, 07:46, 15:54, 07:06, 16:33
            2015-12-12, 07:56, 15:51, 07:16, 16:31
            2015-12-25, 08:05, 15:55, 07:25, 16:36
            2019-08-29, 05:08, 18:54, 04:32, 19:30
            """)
    void sun_and_twilight_agree_with_an_almanac_within_two_minutes(
            LocalDate date, LocalTime rise, LocalTime set, LocalTime first, LocalTime last) {
        Coordinates london = new Coordinates(51.5, -0.1333, ZoneOffset.UTC);
        Light.Hours sun = (Light.Hours) Sunlight.sun(london, date);
        Light.Hours civil = (Light.Hours) Sunlight.civil(london, date);
        near(sun.from(), rise);
        near(sun.to(), set);
        near(civil.from(), first);
        near(civil.to(), last);
    }

    private static void near(ZonedDateTime computed, LocalTime expected) {
        assertThat(computed.toLocalTime()).isCloseTo(expected, within(2, ChronoUnit.MINUTES));
    }

    @ParameterizedTest(name = "{0}, {1} on {2}")
    @CsvSource(textBlock = """
             39.74, -105.18, 2027-03-20
             39.74, -105.18, 2027-06-21
             39.74, -105.18, 2027-09-23
             39.74, -105.18, 2027-12-21
            -33.86,  151.21, 2027-03-20
            -33.86,  151.21, 2027-06-21
            -33.86,  151.21, 2027-09-23
            -33.86,  151.21, 2027-12-21
              1.35,  103.82, 2027-03-20
              1.35,  103.82, 2027-06-21
              1.35,  103.82, 2027-09-23
              1.35,  103.82, 2027-12-21
             58.30, -134.42, 2027-03-20
             58.30, -134.42, 2027-06-21
             58.30, -134.42, 2027-09-23
             58.30, -134.42, 2027-12-21
            """)
    void sun_and_twilight_agree_with_the_equations_after_meeus_within_two_minutes(
            double latitude, double longitude, LocalDate date) {
        // the clock of the sun, so that a date is the same for both ways
        ZoneOffset zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
        Coordinates place = new Coordinates(latitude, longitude, zone);
        double[] sun = AlmanacEquations.riseAndSet(latitude, longitude, date, 90 + 50 / 60.0);
        double[] civil = AlmanacEquations.riseAndSet(latitude, longitude, date, 96);
        Light.Hours day = (Light.Hours) Sunlight.sun(place, date);
        Light.Hours light = (Light.Hours) Sunlight.civil(place, date);
        ZonedDateTime midnight = date.atStartOfDay(ZoneOffset.UTC);
        double[] expected = {sun[0], sun[1], civil[0], civil[1]};
        ZonedDateTime[] computed = {day.from(), day.to(), light.from(), light.to()};
        for (int i = 0; i < 4; i++) {
            double minutes = Duration.between(midnight, computed[i]).toSeconds() / 60.0;
            assertThat(minutes).as("moment %d", i).isCloseTo(expected[i], within(2.0));
        }
    }

    @Test
    void at_midsummer_beyond_the_polar_circle_it_is_always_light() {
        assertThat(Sunlight.sun(TROMSO, LocalDate.of(2027, 6, 21))).isEqualTo(new Light.Always());
        assertThat(Sunlight.sun(TROMSO, LocalDate.of(2027, 6, 21)).length()).isEqualTo(Duration.ofDays(1));
    }

    @Test
    void at_midwinter_beyond_the_polar_circle_the_sun_never_rises_but_there_is_twilight() {
        LocalDate midwinter = LocalDate.of(2027, 12, 21);
        assertThat(Sunlight.sun(TROMSO, midwinter)).isEqualTo(new Light.Never());
        assertThat(Sunlight.civil(TROMSO, midwinter).length()).isBetween(Duration.ofHours(4), Duration.ofHours(5));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"90, 0", "-90, 0", "89.9, 179.9", "0, 0", "0, 180", "0, -180", "66.56, 25", "-66.56, 100"})
    void every_date_has_an_answer_everywhere_and_its_light_lies_around_noon(double latitude, double longitude) {
        Coordinates place = new Coordinates(latitude, longitude, ZoneId.of("Europe/Helsinki"));
        LocalDate first = LocalDate.of(2028, 1, 1);
        for (int day = 0; day < 366; day += 11) {
            LocalDate date = first.plusDays(day);
            ZonedDateTime noon = Sunlight.noon(place, date);
            Light sun = Sunlight.sun(place, date);
            assertThat(sun.length()).isBetween(Duration.ZERO, Duration.ofDays(1));
            assertThat(Sunlight.civil(place, date).length()).isGreaterThanOrEqualTo(sun.length());
            if (sun instanceof Light.Hours(ZonedDateTime from, ZonedDateTime to)) {
                assertThat(noon).isBetween(from, to);
            }
        }
    }

    @Test
    void the_clock_of_the_place_is_kept_summer_time_included() {
        Coordinates denver = new Coordinates(39.74, -104.99, ZoneId.of("America/Denver"));
        Light.Hours before = (Light.Hours) Sunlight.sun(denver, LocalDate.of(2027, 3, 13));
        Light.Hours after = (Light.Hours) Sunlight.sun(denver, LocalDate.of(2027, 3, 14));
        assertThat(Duration.between(before.from(), after.from())).isBetween(Duration.ofHours(23), Duration.ofHours(24));
        assertThat(after.from().toLocalTime()).isAfter(LocalTime.of(7, 0));
        assertThat(before.from().toLocalTime()).isBefore(LocalTime.of(6, 30));
    }

    @Test
    void refuses_what_is_not_on_earth() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Coordinates(90.1, 0, ZoneOffset.UTC))
                .withMessage("latitudeDegrees [90.1] must be from -90.0 to 90.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Coordinates(0, Double.NaN, ZoneOffset.UTC))
                .withMessage("longitudeDegrees [NaN] must be from -180.0 to 180.0");
    }
}
