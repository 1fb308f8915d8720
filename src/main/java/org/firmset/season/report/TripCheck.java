package org.firmset.season.report;

/**
 * One thing to look at before leaving.
 *
 * @param settled true when the plan itself answers it; false when somebody must look
 * @param text what was looked at, with figures
 */
public record TripCheck(boolean settled, String text) {}
