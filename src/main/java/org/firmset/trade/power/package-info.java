/**
 * What sun, battery and generator give, and how much work they allow on a site day. Pure. Energy in watt-hours, power in watts,
 * temperature in degrees Celsius. Planning aid: fuse and cover what cannot be switched off at its source, never charge a
 * battery frozen, run a generator outdoors only, and leave fixed wiring to a licensed electrician where that is required.
 */
@NullMarked
package org.firmset.trade.power;

import org.jspecify.annotations.NullMarked;
