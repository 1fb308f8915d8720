package org.firmset.plan;

/**
 * Packs of one material in one place of a run.
 *
 * @param bay id of the bay; {@link #TRUCK} when a supplier brings it
 */
public record Load(String material, String bay, int packs) {
    /** The only bay of a supplier's delivery. */
    public static final String TRUCK = "truck";
}
