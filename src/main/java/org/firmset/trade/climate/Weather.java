package org.firmset.trade.climate;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The weather to expect at a place: its climate, and on the days of a forecast what that says instead. Means run through
 * the year by {@link MonthlyCurve}, wet days by {@link WetDays}. Immutable.
 */
public final class Weather {
    /**
     * Standard deviation of a day's high or low about its usual value, in degrees Celsius; common practice, no source: 3 to 6
     * are found, less by the sea, more inland and in winter.
     */
    public static final double USUAL_DEVIATION_CELSIUS = 4;

    /** The same about a forecast of a few days; common practice, no source. */
    public static final double FORECAST_DEVIATION_CELSIUS = 2;

    private final MonthlyCurve high;
    private final MonthlyCurve low;
    private final MonthlyCurve sun;
    private final @Nullable MonthlyCurve wind;
    private final WetDays wetDays;
    private final double persistence;
    private final Forecast forecast;

    /** @param persistence of wet days, see {@link WetDryChain#of}; {@link WetDryChain#USUAL_PERSISTENCE} when not known */
    public Weather(YearClimate climate, double persistence, Forecast forecast) {
        high = curve(climate, MonthClimate::meanHighCelsius);
        low = curve(climate, MonthClimate::meanLowCelsius);
        sun = curve(climate, MonthClimate::sunHours);
        boolean windKnown = climate.months().stream().allMatch(m -> m.windMetresPerSecond() != null);
        wind = windKnown ? curve(climate, m -> Objects.requireNonNull(m.windMetresPerSecond())) : null;
        wetDays = WetDays.of(climate.values(MonthClimate::wetDays), persistence);
        this.persistence = persistence;
        this.forecast = forecast;
    }

    public WeatherDay on(LocalDate date) {
        double sunHours = Math.max(0, sun.on(date));
        Optional<ForecastDay> said = forecast.on(date);
        if (said.isPresent()) {
            ForecastDay day = said.get();
            double wet = day.rainPercent() / 100.0;
            Double saidSun = day.sunHours();
            return new WeatherDay(
                    date,
                    new Bell(day.highCelsius(), FORECAST_DEVIATION_CELSIUS),
                    new Bell(day.lowCelsius(), FORECAST_DEVIATION_CELSIUS),
                    wet,
                    saidSun != null ? saidSun : SunSpread.USUAL.meanHours(sunHours, wetDays.wetOdds(date), wet),
                    day.windMetresPerSecond(),
                    true);
        }
        return new WeatherDay(
                date,
                new Bell(high.on(date), USUAL_DEVIATION_CELSIUS),
                new Bell(low.on(date), USUAL_DEVIATION_CELSIUS),
                wetDays.wetOdds(date),
                sunHours,
                wind == null ? null : Math.max(0, wind.on(date)),
                false);
    }

    /**
     * Odds that this many days in a row are dry, the first included. A dry day makes the next one likelier dry, by the chain
     * of {@link WetDryChain#of}; each day keeps its own odds, whether climate or forecast.
     *
     * @param days 1 or more
     */
    public double dryInARow(LocalDate first, int days) {
        double odds = 1 - on(first).wetOdds();
        for (int day = 1; day < days; day++) {
            odds *= 1
                    - WetDryChain.of(on(first.plusDays(day)).wetOdds(), persistence)
                            .wetAfterDry();
        }
        return odds;
    }

    /** Wet and dry days of the climate alone, to draw from. */
    public WetDays wetDays() {
        return wetDays;
    }

    private static MonthlyCurve curve(YearClimate climate, ToDoubleFunction<MonthClimate> value) {
        return MonthlyCurve.of(climate.values(value));
    }
}
