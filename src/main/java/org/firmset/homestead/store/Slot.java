package org.firmset.homestead.store;

import java.util.UUID;

/** Where a row belongs: its homestead, its key among its kind and its position in the list. */
record Slot(Kind kind, HomesteadRow homestead, String key, int position) {
    UUID id() {
        return kind.idOf(homestead.id(), key);
    }
}
