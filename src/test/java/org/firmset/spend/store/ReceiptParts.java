package org.firmset.spend.store;

import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.context.annotation.Import;

/** What the store of receipts is made of, beside that of homesteads. */
@EntityScan(basePackageClasses = ReceiptBook.class)
@Import({ReceiptBook.class, ReceiptRows.class, TakenTables.class, Documents.class, DocumentRows.class})
class ReceiptParts {}
