package org.firmset.homestead;

import java.math.BigDecimal;
import java.time.Month;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.jspecify.annotations.Nullable;

@Described("Where the homestead is.")
public record Place(
        @Described(value = "Latitude in degrees, north positive.", least = "-90", most = "90")
        BigDecimal latitude,

        @Described(value = "Longitude in degrees, east positive.", least = "-180", most = "180")
        BigDecimal longitude,

        @Described("Time zone by its IANA name, such as America/Denver.")
        String timeZone,

        @Described("Monthly normals, January first: twelve, or none when they are not known.")
        List<MonthNormal> climate,

        @Described(
                value =
                        "The most a truck on the track to the site may weigh with its load: as posted, or as you judge it;"
                                + " left out for no limit.",
                least = "500 kg",
                most = "60 t")
        @Nullable
        Mass trackLimit,

        @Described("Months in which the track is too soft for any truck.")
        List<Month> softMonths,

        @Described("Hills and trees that hide the sun; level ground all around where none is written.")
        List<HorizonSector> horizon,

        @Described("A forecast, day after day without a gap; it goes before the normals on its days.")
        List<ForecastDay> forecast) {
    public Place {
        latitude = Measured.normal(latitude);
        longitude = Measured.normal(longitude);
        climate = List.copyOf(climate);
        softMonths = List.copyOf(softMonths);
        horizon = List.copyOf(horizon);
        forecast = List.copyOf(forecast);
    }

    /** The same with other monthly normals. */
    public Place withClimate(List<MonthNormal> changed) {
        return new Place(latitude, longitude, timeZone, changed, trackLimit, softMonths, horizon, forecast);
    }

    /** The same with another forecast. */
    public Place withForecast(List<ForecastDay> changed) {
        return new Place(latitude, longitude, timeZone, climate, trackLimit, softMonths, horizon, changed);
    }
}
