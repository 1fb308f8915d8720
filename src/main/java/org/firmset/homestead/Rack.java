package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Described("A rack on the roof of a vehicle.")
public record Rack(
        @Described(
                value = "The most it may carry: the least of rack's and roof's rating.",
                least = "1 kg",
                most = "1 t")
        Mass rating,

        @Described(value = "Room for cargo.", least = "0 m3", most = "20 m3")
        Volume volume,

        @Described(value = "The longest piece it takes.", least = "0 m", most = "20 m")
        Length longestPiece,

        @Described(
                value = "Its middle, behind the front axle; left out for over the seats.",
                least = "0 m",
                most = "10 m")
        @Nullable
        Length middle) {}
