package org.firmset.homestead;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;

@Described(
        "Hills or trees that hide the sun in some directions, clockwise from one to the other, through north if need be.")
public record HorizonSector(
        @Described(
                value = "Where it begins, in degrees clockwise from true north: 90 is east, 180 south.",
                least = "0",
                most = "360")
        BigDecimal fromDegrees,

        @Described(value = "Where it ends, in degrees clockwise from true north.", least = "0", most = "360")
        BigDecimal toDegrees,

        @Described(value = "How high it stands above the level, in degrees.", least = "0", most = "90")
        BigDecimal elevationDegrees) {
    public HorizonSector {
        fromDegrees = Measured.normal(fromDegrees);
        toDegrees = Measured.normal(toDegrees);
        elevationDegrees = Measured.normal(elevationDegrees);
    }
}
