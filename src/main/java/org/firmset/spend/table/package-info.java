/** Receipts as tables (RFC 4180): reading what people have, whatever its encoding, separator and dates, and writing it. */
@NullMarked
package org.firmset.spend.table;

import org.jspecify.annotations.NullMarked;
