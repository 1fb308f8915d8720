package org.firmset.plan.search;

/** Labour of one stage on one site day. */
record Block(int day, int quarters) {}
