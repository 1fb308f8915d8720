/** What the weather of a place is usually like on a date, and what was measured there. Pure. */
@NullMarked
package org.firmset.trade.climate;

import org.jspecify.annotations.NullMarked;
