package org.firmset.trade.cure;

/**
 * What concrete has to stand while it is young, which sets how long it is protected from cold (ACI 306R, from
 * memory).
 */
public enum Exposure {
    /** Not loaded, and not exposed to freezing later. */
    SHELTERED(2, 1),
    /** Not loaded, but exposed to freezing. */
    EXPOSED(3, 2),
    /** Partly loaded and exposed to freezing. */
    LOADED(6, 4);

    private final int normalDays;
    private final int acceleratedDays;

    Exposure(int normalDays, int acceleratedDays) {
        this.normalDays = normalDays;
        this.acceleratedDays = acceleratedDays;
    }

    /**
     * Days to protect concrete from cold.
     *
     * @param accelerated with an accelerating admixture or more cement; rapid cement counts by itself
     */
    public int protectionDays(Cement cement, boolean accelerated) {
        return accelerated || cement == Cement.RAPID ? acceleratedDays : normalDays;
    }
}
