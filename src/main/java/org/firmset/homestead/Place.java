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
        List<Month> softMonths) {
    public Place {
        latitude = Measured.normal(latitude);
        longitude = Measured.normal(longitude);
        climate = List.copyOf(climate);
        softMonths = List.copyOf(softMonths);
    }
}
