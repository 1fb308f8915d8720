/** From temperatures to strength to the day a wait ends. Pure. */
@NullMarked
package org.firmset.trade.cure;

import org.jspecify.annotations.NullMarked;
