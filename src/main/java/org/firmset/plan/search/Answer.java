package org.firmset.plan.search;

import org.jspecify.annotations.Nullable;

/**
 * What a solver makes of the question for the best solution within a limit.
 *
 * @param bound no plan has a lower value; one more than the limit when none keeps within it
 * @param guide the best solution within the limit; null when none was found
 */
record Answer(long bound, @Nullable Guide guide) {
    /** A limit for the question whether there is a plan at all: then any solution will do. */
    static final long NO_LIMIT = Long.MAX_VALUE / 8;

    static final Answer NONE = new Answer(0, null);

    static Answer impossible(long limit) {
        return new Answer(limit + 1, null);
    }

    boolean isImpossible(long limit) {
        return bound > limit;
    }
}
