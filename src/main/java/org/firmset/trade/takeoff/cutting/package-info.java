/**
 * Cutting stock: which pieces come out of which stock with the least cost, and the proof. The only part of the trade's
 * rooms that knows the solver.
 */
@NullMarked
package org.firmset.trade.takeoff.cutting;

import org.jspecify.annotations.NullMarked;
