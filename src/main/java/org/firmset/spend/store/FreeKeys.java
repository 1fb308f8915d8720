package org.firmset.spend.store;

import java.util.Set;
import org.firmset.spend.Receipt;

/** Sees to it that every receipt of a homestead has a key of its own. */
record FreeKeys(Set<String> taken) {
    /** The receipt under its key, or under the next that is free when another one has it. */
    Receipt of(Receipt receipt) {
        String key = receipt.key();
        for (int i = 2; !taken.add(key); i++) {
            key = receipt.key() + "-" + i;
        }
        return key.equals(receipt.key()) ? receipt : receipt.withKey(key);
    }
}
