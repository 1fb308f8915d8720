package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.jspecify.annotations.Nullable;

@Described("What the axles of a vehicle may carry, and how far behind the front axle its load lies.")
public record Axles(
        @Described(value = "From axle to axle.", least = "1 m", most = "10 m")
        Length wheelbase,

        @Described(value = "Rating of the front axle.", least = "50 kg", most = "20 t")
        Mass frontRating,

        @Described(value = "Rating of the rear axle.", least = "50 kg", most = "30 t")
        Mass rearRating,

        @Described(
                value = "What a scale shows under the front axle when the vehicle is empty.",
                least = "10 kg",
                most = "20 t")
        Mass frontEmpty,

        @Described(value = "Front edge of the room for cargo, behind the front axle.", least = "0 m", most = "10 m")
        Length bayFront,

        @Described(value = "Length of the room for cargo.", least = "0.3 m", most = "12 m")
        Length bayLength,

        @Described(value = "Middle of the people in their seats, behind the front axle.", least = "0 m", most = "8 m")
        Length seats,

        @Described(value = "Middle of the standing kit, behind the front axle.", least = "0 m", most = "12 m")
        Length kit,

        @Described(
                value = "Ball of the hitch, behind the front axle; left out when it tows none.",
                least = "0 m",
                most = "15 m")
        @Nullable
        Length hitch) {}
