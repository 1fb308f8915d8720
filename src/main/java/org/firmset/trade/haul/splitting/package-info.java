/**
 * Cargo split over the fewest runs of a rig, with the proof, and what goes in when the runs are counted. Pure; knows the
 * solver, and serves without it.
 */
@NullMarked
package org.firmset.trade.haul.splitting;

import org.jspecify.annotations.NullMarked;
