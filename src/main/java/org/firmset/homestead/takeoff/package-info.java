/** Takeoffs of a homestead: every calculator of the trade, inputs as people write them, and the needs of stages. */
@NullMarked
package org.firmset.homestead.takeoff;

import org.jspecify.annotations.NullMarked;
