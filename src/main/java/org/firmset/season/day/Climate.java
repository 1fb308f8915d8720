package org.firmset.season.day;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.ForecastDay;
import org.firmset.homestead.MonthNormal;
import org.firmset.homestead.Place;
import org.firmset.measure.Temperature;
import org.firmset.trade.climate.MonthlyValues;

/** High and low of the homestead's place on any date in °C: as the forecast says, else as usual. */
public final class Climate {
    private final MonthlyValues high;
    private final MonthlyValues low;
    private final Map<LocalDate, ForecastDay> forecast;

    private Climate(List<MonthNormal> normals, List<ForecastDay> days) {
        high = values(normals, MonthNormal::meanHigh);
        low = values(normals, MonthNormal::meanLow);
        forecast = days.stream().collect(Collectors.toMap(ForecastDay::date, Function.identity()));
    }

    public static Optional<Climate> of(Place place) {
        return place.climate().isEmpty()
                ? Optional.empty()
                : Optional.of(new Climate(place.climate(), place.forecast()));
    }

    private static MonthlyValues values(List<MonthNormal> normals, Function<MonthNormal, Temperature> part) {
        return new MonthlyValues(
                normals.stream().map(n -> celsius(part.apply(n))).toList());
    }

    private static double celsius(Temperature temperature) {
        return temperature.value().doubleValue();
    }

    public double highOn(LocalDate date) {
        ForecastDay day = forecast.get(date);
        return day == null ? high.on(date) : celsius(day.high());
    }

    public double lowOn(LocalDate date) {
        ForecastDay day = forecast.get(date);
        return day == null ? low.on(date) : celsius(day.low());
    }

    public double meanOn(LocalDate date) {
        return (highOn(date) + lowOn(date)) / 2;
    }

    public boolean isForecast(LocalDate date) {
        return forecast.containsKey(date);
    }
}
