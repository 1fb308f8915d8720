package org.firmset.trade.haul.splitting;

/**
 * Packs of one kind in one bay of a run.
 *
 * @param bay id of the bay
 * @param count 1 or more
 */
public record Placed(String kind, String bay, int count) {}
