package org.firmset.homestead;

import java.math.BigDecimal;
import java.time.Month;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Length;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Forecast;
import org.firmset.trade.climate.Horizon;
import org.firmset.trade.climate.MonthClimate;
import org.firmset.trade.climate.WetDays;
import org.firmset.trade.climate.YearClimate;
import org.jspecify.annotations.Nullable;

/** Between what people write of a place and what sky and weather are reckoned from. A place must keep the homestead's rules. */
public final class SkyRecords {
    private SkyRecords() {}

    public static Coordinates coordinates(Place place) {
        return new Coordinates(
                place.latitude().doubleValue(), place.longitude().doubleValue(), ZoneId.of(place.timeZone()));
    }

    public static Horizon horizon(Place place) {
        return new Horizon(place.horizon().stream()
                .map(s -> new Horizon.Sector(
                        s.fromDegrees().doubleValue(),
                        s.toDegrees().doubleValue(),
                        s.elevationDegrees().doubleValue()))
                .toList());
    }

    /** Empty when the normals are not known. */
    public static Optional<YearClimate> climate(Place place) {
        if (place.climate().isEmpty()) {
            return Optional.empty();
        }
        List<MonthClimate> months = new ArrayList<>();
        for (Month month : Month.values()) {
            MonthNormal normal = place.climate().get(month.getValue() - 1);
            months.add(new MonthClimate(
                    celsius(normal.meanHigh()),
                    celsius(normal.meanLow()),
                    // 29 may be written for a February, which has a quarter of a day less in the mean
                    Math.min(normal.wetDays().doubleValue(), WetDays.daysIn(month)),
                    normal.sunHours().doubleValue(),
                    normal.rain() == null
                            ? null
                            : (Double) (normal.rain().value().doubleValue() * 1000),
                    metresPerSecond(normal.wind())));
        }
        return Optional.of(new YearClimate(months));
    }

    public static Forecast forecast(Place place) {
        return new Forecast(place.forecast().stream()
                .map(d -> new org.firmset.trade.climate.ForecastDay(
                        d.date(),
                        celsius(d.high()),
                        celsius(d.low()),
                        d.wetPercent(),
                        metresPerSecond(d.wind()),
                        d.sunHours() == null ? null : (Double) d.sunHours().doubleValue()))
                .toList());
    }

    /** As they are written in a homestead, January first. */
    public static List<MonthNormal> normals(YearClimate climate) {
        return climate.months().stream()
                .map(m -> new MonthNormal(
                        Temperature.ofCelsius(m.meanHighCelsius()),
                        Temperature.ofCelsius(m.meanLowCelsius()),
                        BigDecimal.valueOf(m.wetDays()),
                        BigDecimal.valueOf(m.sunHours()),
                        m.rainMillimetres() == null
                                ? null
                                : new Length(
                                        BigDecimal.valueOf(m.rainMillimetres()).movePointLeft(3)),
                        speed(m.windMetresPerSecond())))
                .toList();
    }

    /** As they are written in a homestead. */
    public static List<ForecastDay> days(Forecast forecast) {
        return forecast.days().stream()
                .map(d -> new ForecastDay(
                        d.date(),
                        Temperature.ofCelsius(d.highCelsius()),
                        Temperature.ofCelsius(d.lowCelsius()),
                        d.rainPercent(),
                        d.sunHours() == null ? null : BigDecimal.valueOf(d.sunHours()),
                        speed(d.windMetresPerSecond())))
                .toList();
    }

    private static double celsius(Temperature temperature) {
        return temperature.value().doubleValue();
    }

    private static @Nullable Double metresPerSecond(@Nullable Speed speed) {
        return speed == null ? null : (Double) speed.value().doubleValue();
    }

    private static @Nullable Speed speed(@Nullable Double metresPerSecond) {
        return metresPerSecond == null ? null : Speed.ofMetresPerSecond(metresPerSecond);
    }
}
