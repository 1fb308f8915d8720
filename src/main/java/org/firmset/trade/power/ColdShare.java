package org.firmset.trade.power;

/**
 * How much of its rated energy a battery gives in the cold. The maker's sheet comes first; these are for when there is none.
 */
public enum ColdShare {
    /** As much as when it is warm. */
    ALWAYS_ALL(BrokenLine.of(0, 1)),

    /**
     * Deep-cycle lead-acid: rated size divided by 1.00 / 1.04 / 1.11 / 1.19 / 1.30 / 1.40 / 1.59 at 80 / 70 / 60 / 50 / 40 / 30 / 20
     * °F. From memory of makers' sizing sheets; the 1.11 is in check EN-07.
     */
    LEAD_ACID(BrokenLine.of(
            -6.7, 1 / 1.59, -1.1, 1 / 1.40, 4.4, 1 / 1.30, 10, 1 / 1.19, 15.6, 1 / 1.11, 21.1, 1 / 1.04, 26.7, 1)),

    /** Lithium iron phosphate; common practice, no source. */
    LITHIUM(BrokenLine.of(-20, 0.6, 0, 0.85, 20, 1));

    private final BrokenLine shares;

    ColdShare(BrokenLine shares) {
        this.shares = shares;
    }

    /** Over 0 to 1, at the battery's own temperature; colder than the table it stays as at its cold end. */
    public double at(double celsius) {
        return shares.at(celsius);
    }
}
