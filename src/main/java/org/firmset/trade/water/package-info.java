/** Water of a place without a mains: tanks and what they stand on, lines, pumps, tests and disinfection. Pure. */
@NullMarked
package org.firmset.trade.water;

import org.jspecify.annotations.NullMarked;
