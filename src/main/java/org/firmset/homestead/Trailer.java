package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Volume;
import org.jspecify.annotations.Nullable;

@Described("A trailer.")
public record Trailer(
        @Described(value = "Key of the trailer.", key = true)
        String key,

        @Described("Name of the trailer.") String name,

        @Described(value = "Gross trailer weight rating.", least = "50 kg", most = "40 t")
        Mass grossRating,

        @Described(value = "Mass when empty.", least = "20 kg", most = "20 t")
        Mass emptyMass,

        @Described(value = "Percent of its loaded mass that rests on the vehicle.", least = "0", most = "30")
        int tonguePercent,

        @Described(value = "Room for cargo.", least = "0 m3", most = "100 m3")
        Volume deckVolume,

        @Described(value = "The longest piece it takes.", least = "0 m", most = "20 m")
        Length longestPiece,

        @Described("Deck that was measured; left out when it was not.") @Nullable
        Deck deck) {}
