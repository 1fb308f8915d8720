package org.firmset.trade.haul;

/**
 * Packs in a bay.
 *
 * @param bay id of the bay
 */
public record Cargo(String bay, Packs packs) {}
