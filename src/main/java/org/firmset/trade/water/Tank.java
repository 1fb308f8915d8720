package org.firmset.trade.water;

import java.math.BigDecimal;
import org.firmset.measure.Area;
import org.firmset.measure.Density;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Speed;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

/** A water tank, what it stands on, and the wind it meets when empty. */
@Described("A water tank, what it stands on, and the wind it meets when empty.")
public record Tank(
        @Described(value = "Shape of the tank; nominal where its maker says the volume.", usual = "nominal")
        TankShape shape,

        @Described(
                value = "Inside diameter; of a nominal tank the diameter it stands on.",
                least = "0.3 m",
                most = "6 m",
                usual = "8 ft")
        Length diameter,

        @Described(
                value = "Inside height of the straight wall up to the overflow; a lying tank has none.",
                least = "0.2 m",
                most = "6 m",
                usual = "5 ft")
        Length height,

        @Described(value = "Inside length of a box or of a lying tank.", least = "0.3 m", most = "12 m", usual = "6 ft")
        Length length,

        @Described(value = "Inside width of a box.", least = "0.3 m", most = "6 m", usual = "4 ft")
        Length width,

        @Described(
                value = "Height of the cone under a cone-bottom tank.",
                least = "0.05 m",
                most = "3 m",
                usual = "2 ft")
        Length cone,

        @Described(
                value = "Volume that the maker of a nominal tank states.",
                least = "50 L",
                most = "100 m3",
                usual = "1650 gal")
        Volume nominalVolume,

        @Described(
                value = "Depth of the water in it now, over the lowest point inside; left out for a full tank.",
                least = "0 m",
                most = "9 m")
        @Nullable
        Length waterDepth,

        @Described(value = "Mass of the empty tank.", least = "2 kg", most = "10 t", usual = "400 lb")
        Mass emptyMass,

        @Described(
                value = "Area by which it rests on its base, such as that of its feet; left out for its whole plan.",
                least = "0.01 m2",
                most = "72 m2")
        @Nullable
        Area contactArea,

        @Described(value = "Length of the base.", least = "0.3 m", most = "20 m", usual = "9 ft")
        Length baseLength,

        @Described(value = "Width of the base.", least = "0.3 m", most = "20 m", usual = "9 ft")
        Length baseWidth,

        @Described(
                value = "Thickness of the base slab; 0 for a tank on compacted ground without a slab.",
                least = "0 m",
                most = "1 m",
                usual = "4 in")
        Length baseThickness,

        @Described(value = "Density of the base slab.", least = "1800 kg/m3", most = "2600 kg/m3", usual = "150 lb/ft3")
        Density baseDensity,

        @Described(
                value = "How far the base must reach beyond the tank all round.",
                least = "0 m",
                most = "1 m",
                usual = "4 in")
        Length edge,

        @Described(value = "The ground under the base.", usual = "unknown")
        Soil soil,

        @Described(value = "Whether the base stands on fill or on filled block.", usual = "false")
        boolean onFill,

        @Described(
                value = "Greatest gust of wind to be expected; the local code's design wind speed.",
                least = "5 mph",
                most = "200 mph",
                usual = "90 mph")
        Speed wind,

        @Described(
                value = "Factor of the wind's force; left out for the one of the shape, 0.8 round and 1.4 box.",
                least = "0.3",
                most = "2.5")
        @Nullable
        BigDecimal drag,

        @Described(
                value = "Coefficient of friction between the tank and its base, 0.2 to 0.4 for plastic.",
                least = "0.05",
                most = "1",
                usual = "0.3")
        BigDecimal friction,

        @Described(
                value = "Least width between the outer edges of what it stands on, such as a cradle; left out for the"
                        + " tank's own width.",
                least = "0.1 m",
                most = "6 m")
        @Nullable
        Length stance) {}
