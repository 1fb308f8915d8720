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
public record Duplicate(int index, Receipt known) {
    static List<Duplicate> among(List<Receipt> known, List<Receipt> read) {
        Map<Likeness, Receipt> alike = new HashMap<>();
        Map<ContentHash, Receipt> documents = new HashMap<>();
        Map<String, Receipt> keys = new HashMap<>();
        known.forEach(r -> {
            note(r, alike, documents);
            keys.put(r.key(), r);
        });
        List<Duplicate> duplicates = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            Receipt receipt = read.get(i);
            Receipt same = alike.get(Likeness.of(receipt));
            if (same == null && receipt.document() != null) {
                same = documents.get(receipt.document());
            }
            if (same == null) {
                same = keys.get(receipt.key());
            }
            if (same != null) {
                duplicates.add(new Duplicate(i, same));
            }
            note(receipt, alike, documents);
        }
        return duplicates;
    }

    private static void note(Receipt receipt, Map<Likeness, Receipt> alike, Map<ContentHash, Receipt> documents) {
        alike.putIfAbsent(Likeness.of(receipt), receipt);
        if (receipt.document() != null) {
            documents.putIfAbsent(receipt.document(), receipt);
        }
    }
}
