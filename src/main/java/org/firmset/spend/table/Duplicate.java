package org.firmset.spend.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Likeness;
import org.firmset.spend.Receipt;

/**
 * A receipt that may have been taken in before: same date, supplier and sum, the same document or the same key. Two bags bought twice
 * on one day look alike too, so people decide.
 *
 * @param index of the receipt in the preview, from 0
 * @param known the one it repeats, kept already or further up in the same table
 */
public record Duplicate(int index, KnownReceipt known) {
    static List<Duplicate> among(List<KnownReceipt> known, List<Receipt> read) {
        Map<Likeness, KnownReceipt> alike = new HashMap<>();
        Map<ContentHash, KnownReceipt> documents = new HashMap<>();
        Map<String, KnownReceipt> keys = new HashMap<>();
        known.forEach(r -> {
            note(r, alike, documents);
            keys.put(r.key(), r);
        });
        List<Duplicate> duplicates = new ArrayList<>();
        int index = 0;
        for (Receipt receipt : read) {
            KnownReceipt its = KnownReceipt.of(receipt);
            KnownReceipt same = alike.get(its.likeness());
            if (same == null && its.document() != null) {
                same = documents.get(its.document());
            }
            if (same == null) {
                same = keys.get(its.key());
            }
            if (same != null) {
                duplicates.add(new Duplicate(index, same));
            }
            note(its, alike, documents);
            index++;
        }
        return duplicates;
    }

    private static void note(
            KnownReceipt receipt, Map<Likeness, KnownReceipt> alike, Map<ContentHash, KnownReceipt> documents) {
        alike.putIfAbsent(receipt.likeness(), receipt);
        if (receipt.document() != null) {
            documents.putIfAbsent(receipt.document(), receipt);
        }
    }
}
