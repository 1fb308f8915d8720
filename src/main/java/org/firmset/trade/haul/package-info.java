/** What a vehicle may still carry. Pure. */
@NullMarked
package org.firmset.trade.haul;

import org.jspecify.annotations.NullMarked;
