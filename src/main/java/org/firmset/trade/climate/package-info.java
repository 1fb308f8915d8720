/**
 * What the weather of a place is usually like on a date, what was measured or forecast there, how long it is light, and the
 * odds that a day will do for some work. Pure. Units stand in the names; odds are from 0 to 1.
 */
@NullMarked
package org.firmset.trade.climate;

import org.jspecify.annotations.NullMarked;
