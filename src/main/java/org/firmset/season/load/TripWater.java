package org.firmset.season.load;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Water of one trip in whole cans. Work takes the tank's water first and that of cans when the tank has no more.
 *
 * @param tankBefore in the tank when the trip begins, rain included
 * @param rain of that, what rain is counted on to bring since the trip before that took some
 * @param cansBefore full cans that earlier trips left on site
 * @param brought full cans that the trip brings
 * @param used by its work in all
 * @param tankAfter in the tank when it ends
 * @param cansAfter full cans it leaves on site
 * @param emptied the work that takes the last of the tank; null when something is left, or nothing was in it
 */
public record TripWater(
        int tankBefore,
        int rain,
        int cansBefore,
        int brought,
        int used,
        int tankAfter,
        int cansAfter,
        @Nullable Emptied emptied) {

    /** @param stage its key */
    record Emptied(String stage, LocalDate date) {}

    int usedFromTank() {
        return tankBefore - tankAfter;
    }
}
