package org.firmset.plan.search;

/**
 * What some hours in a row do to the charge of the battery, in quarters of a watt-hour: a charge of {@code need} or more becomes
 * {@code most} or, if that is less, {@code shift} more than it was; with less the floor does not hold.
 *
 * @param need {@link #NEVER} when no battery is full enough
 */
record Stretch(long need, long shift, long most) {
    /** No battery holds so much. */
    static final long NEVER = Long.MAX_VALUE / 4;

    /** No time at all. */
    static final Stretch NOTHING = new Stretch(0, 0, NEVER);

    /** One hour after the other. */
    Stretch then(Stretch next) {
        if (need >= NEVER || next.need >= NEVER || most < next.need) {
            return new Stretch(NEVER, 0, NEVER);
        }
        return new Stretch(
                Math.max(need, next.need - shift), shift + next.shift, Math.min(next.most, most + next.shift));
    }

    /** What a charge becomes; less than nothing where the floor does not hold. */
    long after(long charge) {
        return charge < need ? -1 : Math.min(most, charge + shift);
    }

    /** The least charge before with which that much is there after. */
    long before(long charge) {
        return most < charge || need >= NEVER ? NEVER : Math.max(need, charge - shift);
    }
}
