package org.firmset.homestead;

import java.util.List;
import org.firmset.measure.Described;
import org.jspecify.annotations.Nullable;

@Described("Quantities worked out from dimensions.")
public record Takeoff(
        @Described(value = "Key of the takeoff.", key = true)
        String key,

        @Described("Name of the takeoff.") String name,

        @Described("What is worked out: slab, wall-fill, cut-list and so on; 'firmset takeoff' lists them.")
        String kind,

        @Described(value = "The stage that takes its needs from it; left out for none.", names = "stage") @Nullable
        String stage,

        @Described("The inputs that were entered; all others are as usual.")
        List<Given> given,

        @Described("Which of its quantities are which material.")
        List<Supply> supplies) {
    public Takeoff {
        given = List.copyOf(given);
        supplies = List.copyOf(supplies);
    }
}
