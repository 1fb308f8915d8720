package org.firmset.spend.table;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Keys;

/**
 * What a table is taken into.
 *
 * @param currency ISO 4217 code of the homestead's one currency
 * @param receipts those that are there already
 * @param files the tables that were taken in before, each with when it was the last time
 */
public record Ledger(Keys keys, String currency, List<KnownReceipt> receipts, Map<ContentHash, Instant> files) {
    public Ledger {
        receipts = List.copyOf(receipts);
        files = Map.copyOf(files);
    }

    /** Nothing has been bought yet. */
    public static Ledger empty(Keys keys, String currency) {
        return new Ledger(keys, currency, List.of(), Map.of());
    }
}
