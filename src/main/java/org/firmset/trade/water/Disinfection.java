package org.firmset.trade.water;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/** Disinfection of a new or opened tank or of its pipes with chlorine. */
@Described("Disinfection of a new or opened tank or of its pipes with chlorine.")
public record Disinfection(
        @Described(value = "How it is done.", usual = "full-tank")
        DisinfectionMethod method,

        @Described(value = "Volume of the tank; 0 for pipes alone.", least = "0 L", most = "200 m3", usual = "1650 gal")
        Volume tankVolume,

        @Described(value = "Inside diameter of the pipes.", least = "8 mm", most = "160 mm", usual = "1.049 in")
        Length pipeBore,

        @Described(value = "Length of the pipes; 0 for none.", least = "0 m", most = "5000 m", usual = "0 ft")
        Length pipeLength,

        @Described(
                value = "Water mixed for spraying or painting the walls.",
                least = "1 L",
                most = "1 m3",
                usual = "5 gal")
        Volume sprayVolume,

        @Described(value = "What the chlorine comes in.", usual = "liquid")
        Disinfectant disinfectant,

        @Described(
                value = "Available chlorine of the product in percent, as its label says.",
                least = "1",
                most = "75",
                usual = "6")
        BigDecimal strengthPercent,

        @Described(
                value = "Chlorine wanted at first in mg/L (ppm); left out for the usual one of the method.",
                least = "1",
                most = "300")
        @Nullable
        BigDecimal doseMgPerLitre) {

    /**
     * Volume in m3 of the inside of a pipe.
     *
     * @param bore in metres, over 0
     * @param length in metres, 0 or more
     */
    public static double pipeVolume(double bore, double length) {
        return TankVolume.upright(bore, length);
    }
}
