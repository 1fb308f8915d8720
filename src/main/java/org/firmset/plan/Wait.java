package org.firmset.plan;

/**
 * What must pass between the end of one stage and the start of another.
 *
 * @param from id of the stage before
 * @param to id of the stage after
 * @param mostDays the longest the stage after may start behind the finish of the stage before; {@link #NO_LIMIT} for
 *     none
 */
public record Wait(String id, String name, WaitKind kind, String from, String to, LeastWait least, int mostDays) {
    public static final int NO_LIMIT = Integer.MAX_VALUE;

    public Wait {
        Require.notNegative(mostDays, "mostDays", "wait", id);
        Require.that(!from.equals(to), "wait [%s] must not lead from stage [%s] to itself", id, from);
    }

    public boolean hasMost() {
        return mostDays != NO_LIMIT;
    }
}
