package org.firmset.trade.haul.splitting;

/**
 * What no run can carry, not even alone in the rig.
 *
 * @param most what the rig takes of that measure for a single pack: millimetres, millilitres or grams
 */
public record Unfit(Cargo cargo, Why why, long most) {
    /** The first of these that stands in the way. */
    public enum Why {
        /** Longer than every bay takes. */
        TOO_LONG,
        /** Of more volume than the bays that are long enough. */
        TOO_LARGE,
        /** Over a limit of mass wherever it lies. */
        TOO_HEAVY
    }
}
