package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Described("A vehicle that carries people and cargo.")
public record Vehicle(
        @Described(value = "Key of the vehicle.", key = true)
        String key,

        @Described("Name of the vehicle.") String name,

        @Described(value = "Gross vehicle weight rating.", least = "100 kg", most = "40 t")
        Mass grossRating,

        @Described(value = "Mass when empty, fuel included.", least = "50 kg", most = "40 t")
        Mass emptyMass,

        @Described(value = "Tools and kit that always ride along.", least = "0 kg", most = "5 t")
        Mass standingKit,

        @Described(value = "Room for cargo.", least = "0 m3", most = "100 m3")
        Volume bayVolume,

        @Described(value = "The longest piece it takes.", least = "0 m", most = "20 m")
        Length longestPiece,

        @Described(
                value = "The heaviest trailer it may tow; left out when it tows none.",
                least = "0 kg",
                most = "40 t")
        @Nullable
        Mass towRating,

        @Described(
                value = "The most that vehicle, trailer and all in them may weigh; left out when it is not known.",
                least = "100 kg",
                most = "80 t")
        @Nullable
        Mass combinationRating,

        @Described(
                value = "The most that may rest on the ball of its hitch; left out when it is not known.",
                least = "1 kg",
                most = "10 t")
        @Nullable
        Mass tongueRating,

        @Described("Axles that were weighed and measured; left out when they were not.") @Nullable
        Axles axles,

        @Described("It has a rack on the roof; left out for none.") @Nullable
        Rack roof) {}
