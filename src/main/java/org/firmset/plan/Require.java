package org.firmset.plan;

import org.jspecify.annotations.Nullable;

/** Refuses a programmer's mistake at once; a user's mistake was found before a planning problem is made. */
final class Require {
    private Require() {}

    static void that(boolean holds, String message, @Nullable Object... arguments) {
        if (!holds) {
            throw new IllegalArgumentException(message.formatted(arguments));
        }
    }

    static void notNegative(long value, String what, String kind, Object which) {
        that(value >= 0, "%s [%d] of %s [%s] must not be negative", what, value, kind, which);
    }
}
