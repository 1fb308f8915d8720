package org.firmset.plan;

/**
 * How hard to look. Counted in plans looked at, not in seconds, so that the same input gives the same plan on any
 * machine.
 *
 * @param plans how many plans the search may build, at least 1
 * @param seed where its chances start
 */
public record Effort(int plans, long seed) {
    /** Enough for a good plan while a person waits for a screen. */
    public static final Effort NORMAL = new Effort(250, 1);

    /** Worth the wait once a plan is on the screen. */
    public static final Effort THOROUGH = new Effort(5000, 1);

    public Effort {
        Require.that(plans >= 1, "plans [%d] of an effort must be at least 1", plans);
    }
}
