package org.firmset.plan.search;

/**
 * Packs that came from one source and are used by one block.
 *
 * @param source a run, or a lot that is on site already; see {@link Supply}
 * @param bay which bay of the run's rig; 0 for deliveries and lots
 */
record Reservation(int source, int bay, int material, int packs, int useDay) {}
