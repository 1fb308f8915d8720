package org.firmset.homestead;

import org.firmset.measure.Area;
import org.firmset.measure.Described;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Described("Water on site for mixing, curing and cleaning, and how more of it comes.")
public record WaterStore(
        @Described(value = "What the tanks hold when full.", least = "0 L", most = "1000 m3")
        Volume tank,

        @Described(value = "What is in them now.", least = "0 L", most = "1000 m3")
        Volume now,

        @Described(
                value = "Roof that leads rain into the tanks, seen from above; left out for none.",
                least = "0 m2",
                most = "10000 m2")
        @Nullable
        Area roof,

        @Described(
                value = "Percent of the rain on the roof that arrives in the tanks.",
                least = "0",
                most = "100",
                usual = "80")
        int catchPercent,

        @Described(
                value = "What one container holds that water is brought in.",
                least = "1 L",
                most = "2 m3",
                usual = "20 L")
        Volume can,

        @Described(value = "Mass of the empty container.", least = "0 kg", most = "500 kg", usual = "1 kg")
        Mass canMass) {}
