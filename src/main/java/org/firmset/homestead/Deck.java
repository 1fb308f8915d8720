package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.jspecify.annotations.Nullable;

@Described("Where the deck of a trailer lies.")
public record Deck(
        @Described(
                value = "From the coupler to the axle, or to the middle between two.",
                least = "0.5 m",
                most = "15 m")
        Length axle,

        @Described(value = "From the coupler to the front edge of the deck.", least = "0 m", most = "10 m")
        Length front,

        @Described(value = "Length of the deck.", least = "0.3 m", most = "15 m")
        Length length,

        @Described(
                value = "Rating of all its axles together; left out when it is not known.",
                least = "50 kg",
                most = "40 t")
        @Nullable
        Mass axleRating) {}
