package org.firmset.trade.climate;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What may be expected of a day.
 *
 * @param high how the day's highest temperature may fall, in degrees Celsius
 * @param low how its lowest may
 * @param wetOdds odds of rain or snow, 0 to 1
 * @param sunHours sun energy in mean, in hours of full sun: as a forecast says, or that of the climate,
 *     less where a forecast says more rain
 * @param windMetresPerSecond mean wind; null when not known
 * @param forecast whether a forecast said so, or only the climate
 */
public record WeatherDay(
        LocalDate date,
        Bell high,
        Bell low,
        double wetOdds,
        double sunHours,
        @Nullable Double windMetresPerSecond,
        boolean forecast) {
    /** How far a forecast of wind is off, as a share of it; common practice, no source. */
    private static final double FORECAST_WIND_SHARE = 0.25;

    public WeatherDay {
        Demand.within("wetOdds", wetOdds, 0, 1);
        Demand.within("sunHours", sunHours, 0, 24);
    }

    /**
     * Hours of full sun on a poor day, see {@link SunSpread#hours}.
     *
     * @param percent of the days that have less, 1 to 99
     */
    public double poorSunHours(int percent) {
        return SunSpread.USUAL.hours(sunHours, wetOdds, percent);
    }

    /** Odds that the low is at 0 °C or under. */
    public double frostOdds() {
        return low.under(0);
    }

    /**
     * Odds of wind under a speed: without a forecast by Rayleigh's distribution about the mean (Weibull's with shape 2, common
     * for wind; from memory), with one by a normal one a quarter as wide as the forecast wind. Empty when wind is not known.
     */
    public OptionalDouble windUnder(double metresPerSecond) {
        if (windMetresPerSecond == null) {
            return OptionalDouble.empty();
        }
        double mean = windMetresPerSecond;
        if (mean == 0) {
            return OptionalDouble.of(metresPerSecond > 0 ? 1 : 0);
        }
        double share = metresPerSecond / mean;
        return OptionalDouble.of(
                forecast
                        ? new Bell(mean, mean * FORECAST_WIND_SHARE).under(metresPerSecond)
                        : 1 - Math.exp(-Math.PI / 4 * share * share));
    }
}
