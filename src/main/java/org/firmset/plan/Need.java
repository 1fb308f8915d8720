package org.firmset.plan;

/** Whole packs of a material that a stage still uses up, in step with its progress. */
public record Need(String material, int packs) {
    public Need {
        Require.that(packs > 0, "packs [%d] of need for [%s] must be at least 1", packs, material);
    }

    /** Packs used up when {@code done} of {@code whole} quarter-hours are done: ceil(packs x done / whole). */
    public int usedWhen(int done, int whole) {
        return Math.toIntExact(Math.ceilDiv((long) packs * done, whole));
    }
}
