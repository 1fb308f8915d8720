/**
 * What a vehicle and its trailer may still carry, where a load lies in them and what holds it there. Pure. Masses in grams,
 * lengths in millimetres, volumes in millilitres. Planning aid: sticker, maker, scale and the law come first.
 */
@NullMarked
package org.firmset.trade.haul;

import org.jspecify.annotations.NullMarked;
