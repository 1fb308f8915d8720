/** Pages of receipts: the list, one receipt, tables that are brought in, photos and papers. */
@NullMarked
package org.firmset.spend.ui;

import org.jspecify.annotations.NullMarked;
