/**
 * Cutting stock: which pieces come out of which stock with the least cost, and the proof. With the splitting of loads the
 * only part of the trade's rooms that knows the solver.
 */
@NullMarked
package org.firmset.trade.takeoff.cutting;

import org.jspecify.annotations.NullMarked;
