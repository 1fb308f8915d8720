package org.firmset.spend.store;

import java.util.List;
import java.util.UUID;
import org.firmset.spend.Receipt;

/**
 * A receipt as it is kept, with what was photographed or scanned of it. The version differs after every change; give it
 * back with the next change.
 */
public record KeptReceipt(UUID id, long version, Receipt receipt, List<KeptDocument> documents) {
    public KeptReceipt {
        documents = List.copyOf(documents);
    }
}
