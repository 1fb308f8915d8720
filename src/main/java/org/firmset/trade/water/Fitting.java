package org.firmset.trade.water;

/** What else takes head along a pipe: h = k v2 / 2g; threaded fittings, valves fully open. */
public enum Fitting {
    ENTRANCE(0.5),
    EXIT(1),
    ELBOW(1.5),
    TEE_THROUGH(0.9),
    TEE_BRANCH(2),
    FULL_BORE_VALVE(0.15),
    GLOBE_VALVE(10),
    CHECK_VALVE(2);

    private final double k;

    Fitting(double k) {
        this.k = k;
    }

    /** The loss in velocity heads. */
    public double k() {
        return k;
    }
}
