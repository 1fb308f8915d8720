package org.firmset.plan;

/** The hard rules of a plan, as numbered in the {@linkplain org.firmset.plan package description}. */
public enum Rule {
    LABOUR,
    WAITS,
    HOURS,
    CREW,
    SHUT,
    POWER,
    RUNS,
    SUPPLIES,
    PINNED,
    TOOLS,
    MONEY
}
