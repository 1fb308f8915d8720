package org.firmset.homestead;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;

@Described("Where the homestead is.")
public record Place(
        @Described(value = "Latitude in degrees, north positive.", least = "-90", most = "90")
        BigDecimal latitude,

        @Described(value = "Longitude in degrees, east positive.", least = "-180", most = "180")
        BigDecimal longitude,

        @Described("Time zone by its IANA name, such as America/Denver.")
        String timeZone,

        @Described("Monthly normals, January first: twelve, or none when they are not known.")
        List<MonthNormal> climate) {
    public Place {
        latitude = Measured.normal(latitude);
        longitude = Measured.normal(longitude);
        climate = List.copyOf(climate);
    }
}
