package org.firmset.trade.haul;

/**
 * A place in a rig that takes cargo: the bed of a pickup, the deck of a trailer.
 *
 * @param millilitres room for cargo
 * @param longestMillimetres the longest piece that may go in
 */
public record Bay(String id, String name, long millilitres, long longestMillimetres) {}
