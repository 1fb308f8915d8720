package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.firmset.trade.climate.Horizon.Sector;
import org.junit.jupiter.api.Test;

class HorizonTest {
    private static final Coordinates PLACE = new Coordinates(40, -105, ZoneOffset.ofHours(-7));
    private static final LocalDate EQUINOX = LocalDate.of(2027, 3, 20);

    @Test
    void a_sector_runs_clockwise_through_north_if_need_be() {
        Horizon horizon = new Horizon(List.of(new Sector(350, 10, 5), new Sector(90, 180, 20)));
        assertThat(horizon.elevationDegrees(355)).isEqualTo(5);
        assertThat(horizon.elevationDegrees(0)).isEqualTo(5);
        assertThat(horizon.elevationDegrees(9.9)).isEqualTo(5);
        assertThat(horizon.elevationDegrees(10)).isZero();
        assertThat(horizon.elevationDegrees(90)).isEqualTo(20);
        assertThat(horizon.elevationDegrees(180)).isZero();
    }

    @Test
    void the_higher_of_two_sectors_counts_and_0_to_360_is_all_around() {
        Horizon horizon = new Horizon(List.of(new Sector(0, 360, 3), new Sector(100, 120, 9)));
        assertThat(horizon.elevationDegrees(110)).isEqualTo(9);
        assertThat(horizon.elevationDegrees(300)).isEqualTo(3);
    }

    @Test
    void the_sun_must_stand_above_the_hill() {
        Horizon hill = new Horizon(List.of(new Sector(80, 100, 12)));
        assertThat(hill.shows(new SkyPoint(90, 12))).isFalse();
        assertThat(hill.shows(new SkyPoint(90, 12.1))).isTrue();
        assertThat(hill.shows(new SkyPoint(110, 1))).isTrue();
    }

    @Test
    void on_a_flat_horizon_there_is_sun_from_rise_to_set_but_for_its_edge() {
        DirectSun sun = DirectSun.on(PLACE, EQUINOX, Horizon.FLAT);
        assertThat(sun.spans()).hasSize(1);
        Duration day = Sunlight.sun(PLACE, EQUINOX).length();
        assertThat(day.minus(sun.length())).isBetween(Duration.ZERO, Duration.ofMinutes(10));
    }

    @Test
    void an_eastern_hill_of_30_degrees_takes_the_morning() {
        // at the equinox the sun climbs by sin(elevation) = cos(latitude) x sin(hour angle from six): 30 degrees after
        // 2 h 43 min
        DirectSun sun = DirectSun.on(PLACE, EQUINOX, new Horizon(List.of(new Sector(0, 180, 30))));
        double hours = Math.toDegrees(Math.asin(0.5 / Math.cos(Math.toRadians(40)))) / 15;
        assertThat(hours).isBetween(2.7, 2.75);
        LocalTime first = sun.spans().getFirst().from().toLocalTime();
        LocalTime expected = LocalTime.of(6, 7).plusMinutes(Math.round(hours * 60));
        assertThat(Duration.between(expected, first).abs()).isLessThan(Duration.ofMinutes(4));
    }

    @Test
    void a_ridge_in_the_south_parts_the_day_in_two() {
        DirectSun sun = DirectSun.on(PLACE, EQUINOX, new Horizon(List.of(new Sector(160, 200, 80))));
        assertThat(sun.spans()).hasSize(2);
        assertThat(sun.spans().getFirst().to()).isBefore(Sunlight.noon(PLACE, EQUINOX));
        assertThat(sun.spans().getLast().from()).isAfter(Sunlight.noon(PLACE, EQUINOX));
    }

    @Test
    void where_the_sun_does_not_set_the_span_is_the_whole_date() {
        Coordinates north = new Coordinates(75, 20, ZoneOffset.ofHours(1));
        assertThat(DirectSun.on(north, LocalDate.of(2027, 6, 21), Horizon.FLAT).length())
                .isEqualTo(Duration.ofDays(1));
        assertThat(DirectSun.on(north, LocalDate.of(2027, 12, 21), Horizon.FLAT).spans())
                .isEmpty();
    }

    @Test
    void refuses_sectors_without_width_or_beyond_the_circle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Sector(90, 90, 5))
                .withMessage("toDegrees [90.0] must differ from fromDegrees");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Sector(0, 361, 5))
                .withMessage("toDegrees [361.0] must be from 0.0 to 360.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Sector(0, 90, -1))
                .withMessageStartingWith("elevationDegrees [-1.0]");
    }
}
