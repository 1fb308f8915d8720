package org.firmset.season.money;

import org.jspecify.annotations.Nullable;

/** Who bears a cost; both null for nobody yet. */
record Bearer(@Nullable String subproject, @Nullable String stage) {
    static final Bearer NOBODY = new Bearer(null, null);
}
