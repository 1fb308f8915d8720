/** From temperatures to strength to the day a wait ends, and what weather fresh concrete stands. Pure. */
@NullMarked
package org.firmset.trade.cure;

import org.jspecify.annotations.NullMarked;
