/** The shared estimating core: from dimensions to quantities of material, with a trace of every figure. Pure. */
@NullMarked
package org.firmset.trade.takeoff;

import org.jspecify.annotations.NullMarked;
