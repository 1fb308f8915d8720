/** How a figure came about: results of the trade's arithmetic with formula, source and caution beside every line. Pure. */
@NullMarked
package org.firmset.trade.trace;

import org.jspecify.annotations.NullMarked;
