package org.firmset.plan;

import java.time.LocalDate;

/**
 * Something that is carried to site in whole packs.
 *
 * @param grams mass of a pack
 * @param millilitres volume of a pack
 * @param longestMillimetres its longest side
 * @param dry must be kept dry on site
 * @param shelfLifeDays days after arrival on which it may still be used; {@link #NEVER_GOES_OFF} for no limit
 * @param availableFrom the first date on which a run can fetch it
 * @param cents price of a pack
 */
public record Material(
        String id,
        String name,
        long grams,
        long millilitres,
        long longestMillimetres,
        boolean dry,
        int shelfLifeDays,
        LocalDate availableFrom,
        long cents) {

    public static final int NEVER_GOES_OFF = Integer.MAX_VALUE;

    public Material {
        Require.notNegative(grams, "grams", "material", id);
        Require.notNegative(millilitres, "millilitres", "material", id);
        Require.notNegative(longestMillimetres, "longestMillimetres", "material", id);
        Require.notNegative(shelfLifeDays, "shelfLifeDays", "material", id);
        Require.notNegative(cents, "cents", "material", id);
    }

    /** Whether a pack that arrived on {@code arrival} may be used on {@code date}. */
    public boolean goodOn(LocalDate date, LocalDate arrival) {
        return shelfLifeDays == NEVER_GOES_OFF || date.toEpochDay() - arrival.toEpochDay() <= shelfLifeDays;
    }
}
