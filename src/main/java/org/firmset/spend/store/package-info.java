/**
 * Keeps receipts in the database and their photos and papers in the data folder. {@link
 * org.firmset.spend.store.ReceiptBook} and {@link org.firmset.spend.store.Documents} are for others.
 */
@NullMarked
package org.firmset.spend.store;

import org.jspecify.annotations.NullMarked;
