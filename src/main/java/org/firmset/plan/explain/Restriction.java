package org.firmset.plan.explain;

/**
 * One rule of a problem that could be otherwise.
 *
 * @param id of the wait, stage, tool, material, trip or subproject; empty where there is one for the whole place
 */
public record Restriction(Kind kind, String id) {
    public static final String WHOLE = "";

    static Restriction of(Kind kind) {
        return new Restriction(kind, WHOLE);
    }

    boolean isWhole() {
        return id.isEmpty();
    }
}
