package org.firmset.trade.haul;

/**
 * A place in a bay that packs of one kind may take.
 *
 * @param zone the foremost zone it covers, from 0
 * @param zones how many it covers
 * @param from millimetres from the front edge of the bay
 * @param middle where the mass acts, likewise
 */
record Spot(int zone, int zones, long from, long length, double middle, long overFront, long overRear) {}
