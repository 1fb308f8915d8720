package org.firmset.trade.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Horizon;
import org.firmset.trade.climate.SkyPoint;
import org.firmset.trade.power.Panels.SunKnown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SunCurveTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 20);

    private static SunCurve curve(Panels panels, Horizon horizon, int stepMinutes) {
        return SunCurve.of(new SunCurve.Site(Camp.PLACE, horizon, panels), new SunCurve.Day(MARCH, 5, 15), stepMinutes);
    }

    private static Panels panels(double tilt, double azimuth, SunKnown known) {
        return new Panels(400, tilt, azimuth, 25, 0, 45, known);
    }

    @ParameterizedTest(name = "{0} minutes")
    @ValueSource(ints = {15, 30, 60})
    void the_day_adds_up_to_hours_of_full_sun_less_losses_as_the_simple_sum_has_it(int stepMinutes) {
        SunCurve curve = curve(Camp.PANELS, Horizon.FLAT, stepMinutes);
        assertThat(400 * curve.hours()).isCloseTo(Sun.wattHours(400, 5, 75), within(1e-6));
        assertThat(curve.steps()).isEqualTo(24 * 60 / stepMinutes);
    }

    @Test
    void nothing_at_night_most_at_the_suns_noon() {
        SunCurve curve = curve(Camp.PANELS, Horizon.FLAT, 15);
        assertThat(curve.wattsPerWatt(0)).isZero();
        assertThat(curve.wattsPerWatt(95)).isZero();
        int most = IntStream.range(0, 96)
                .reduce((a, b) -> curve.wattsPerWatt(a) >= curve.wattsPerWatt(b) ? a : b)
                .orElseThrow();
        // with summer time the sun is highest at eight past one
        assertThat(most).isBetween(51, 54);
    }

    @Test
    void panels_that_look_east_give_their_sun_in_the_morning() {
        assertThat(morning(curve(panels(60, 90, SunKnown.ON_PANELS), Horizon.FLAT, 15)))
                .isGreaterThan(0.7);
        assertThat(morning(curve(panels(60, 270, SunKnown.ON_PANELS), Horizon.FLAT, 15)))
                .isLessThan(0.3);
    }

    private static double morning(SunCurve curve) {
        return IntStream.range(0, 52).mapToDouble(curve::wattsPerWatt).sum() * 0.25 / curve.hours();
    }

    @Test
    void sun_measured_on_level_ground_is_turned_to_the_panels() {
        double flat = curve(panels(0, 180, SunKnown.ON_LEVEL_GROUND), Horizon.FLAT, 15)
                .hours();
        double south = curve(panels(40, 180, SunKnown.ON_LEVEL_GROUND), Horizon.FLAT, 15)
                .hours();
        double north =
                curve(panels(40, 0, SunKnown.ON_LEVEL_GROUND), Horizon.FLAT, 15).hours();
        assertThat(flat).isCloseTo(5 * 0.75, within(1e-9));
        // at the equinox a beam alone would gain 1 / cos(latitude) = 1.30
        assertThat(south / flat).isBetween(1.15, 1.30);
        assertThat(north / flat).isBetween(0.2, 0.6);
    }

    @Test
    void a_hill_takes_the_beam_and_leaves_the_sky() {
        SunCurve open = curve(Camp.PANELS, Horizon.FLAT, 15);
        SunCurve shaded = curve(Camp.PANELS, new Horizon(List.of(new Horizon.Sector(0, 180, 60))), 15);
        assertThat(shaded.wattsPerWatt(40)).isBetween(0.01 * open.wattsPerWatt(40), 0.2 * open.wattsPerWatt(40));
        assertThat(shaded.wattsPerWatt(60)).isEqualTo(open.wattsPerWatt(60));
        assertThat(shaded.hours()).isBetween(0.4 * open.hours(), 0.65 * open.hours());
    }

    @Test
    void heat_takes_its_share_where_it_is_not_in_the_losses() {
        Panels hot = new Panels(400, 30, 180, 25, -0.4, 45, SunKnown.ON_PANELS);
        double cool = curve(Camp.PANELS, Horizon.FLAT, 15).hours();
        assertThat(curve(hot, Horizon.FLAT, 15).hours()).isBetween(0.9 * cool, 0.99 * cool);
    }

    @Test
    void where_the_sun_never_rises_there_is_none_to_spread() {
        Coordinates north = new Coordinates(75, 20, ZoneId.of("Europe/Oslo"));
        SunCurve curve = SunCurve.of(
                new SunCurve.Site(north, Horizon.FLAT, Camp.PANELS),
                new SunCurve.Day(LocalDate.of(2027, 12, 21), 0.1, -20),
                60);
        assertThat(curve.hours()).isZero();
    }

    @Test
    void a_clear_noon_is_of_the_size_that_clear_noons_are() {
        // 1353 x 0.7 = 947 W/m2 of beam straight down and a tenth of it from the sky
        assertThat(ClearSky.on(new SkyPoint(180, 90), false, 0, 180)).isCloseTo(947 * 1.1, within(2.0));
        assertThat(ClearSky.on(new SkyPoint(180, 90), true, 0, 180)).isCloseTo(94.7, within(0.2));
        assertThat(ClearSky.on(new SkyPoint(180, -1), false, 0, 180)).isZero();
    }

    @Test
    void refuses_steps_that_do_not_fit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunCurve.dark(20))
                .withMessage("stepMinutes [20] must be 15, 30 or 60");
    }
}
