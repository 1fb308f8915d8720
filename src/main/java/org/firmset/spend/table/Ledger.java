package org.firmset.spend.table;

import java.util.List;
import java.util.Set;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Keys;

/**
 * What a table is taken into.
 *
 * @param currency ISO 4217 code of the homestead's one currency
 * @param receipts those that are there already
 * @param files hashes of the tables that were taken in before
 */
public record Ledger(Keys keys, String currency, List<KnownReceipt> receipts, Set<ContentHash> files) {
    public Ledger {
        receipts = List.copyOf(receipts);
        files = Set.copyOf(files);
    }

    /** Nothing has been bought yet. */
    public static Ledger empty(Keys keys, String currency) {
        return new Ledger(keys, currency, List.of(), Set.of());
    }
}
