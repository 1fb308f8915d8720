package org.firmset.plan;

/**
 * How hard to look. Counted in plans looked at, not in seconds, so that the same input gives the same plan on any
 * machine.
 *
 * @param plans how many plans the search may build, at least 1
 * @param seed where its chances start
 * @param proof how hard to look for a proof that no plan is better, in the solver's units of about a second; 0 for the
 *     simple bounds only
 * @param any true to stop at the first plan that keeps every hard rule, good or not: enough to know that there is one
 */
public record Effort(int plans, long seed, int proof, boolean any) {
    /** Enough for a good plan while a person waits for a screen. */
    public static final Effort NORMAL = new Effort(250, 1, 0);

    /** Worth the wait once a plan is on the screen. */
    public static final Effort THOROUGH = new Effort(5000, 1, 4);

    public Effort {
        Require.that(plans >= 1, "plans [%d] of an effort must be at least 1", plans);
        Require.that(proof >= 0, "proof [%d] of an effort must not be negative", proof);
    }

    public Effort(int plans, long seed, int proof) {
        this(plans, seed, proof, false);
    }

    /** Only to know whether there is a plan. */
    public static Effort forAny(int plans, long seed, int proof) {
        return new Effort(plans, seed, proof, true);
    }

    /** The same, but with another effort for the proof. */
    public Effort withProof(int other) {
        return new Effort(plans, seed, other, any);
    }

    /** Without looking for a proof. */
    public Effort(int plans, long seed) {
        this(plans, seed, 0);
    }
}
