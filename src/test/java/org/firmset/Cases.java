package org.firmset;

/**
 * How many random cases a property is tried on. A share of the full number by default, so that all tests are done within
 * minutes; {@code -Dfirmset.cases=100} tries them all, and more tries more.
 */
public final class Cases {
    private static final int PERCENT = Integer.getInteger("firmset.cases", 30);

    private Cases() {}

    /** @param full the number at 100 percent */
    public static int of(int full) {
        return Math.max(1, full * PERCENT / 100);
    }
}
