package org.firmset.spend.table;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Keys;
import org.jspecify.annotations.Nullable;

/**
 * What a table is taken into.
 *
 * @param currency ISO 4217 code of the homestead's one currency
 * @param receipts those that are there already
 * @param files the tables that were taken in before, each with when it was the last time
 * @param today nothing was bought or paid after it; null to take what is dated later, too
 */
public record Ledger(
        Keys keys,
        String currency,
        List<KnownReceipt> receipts,
        Map<ContentHash, Instant> files,
        @Nullable LocalDate today) {
    public Ledger {
        receipts = List.copyOf(receipts);
        files = Map.copyOf(files);
    }

    /** Nothing has been bought yet, and nobody says which day it is. */
    public static Ledger empty(Keys keys, String currency) {
        return new Ledger(keys, currency, List.of(), Map.of(), null);
    }

    /** The same on this day. */
    public Ledger on(LocalDate day) {
        return new Ledger(keys, currency, receipts, files, day);
    }
}
