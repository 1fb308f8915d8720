package org.firmset.trade.haul;

/** What may not carry more than its rating. */
public enum LimitKind {
    PAYLOAD("payload"),
    FRONT_AXLE("front axle"),
    REAR_AXLE("rear axle"),
    ROOF("roof rack"),
    TRAILER_RATING("trailer rating"),
    TRAILER_AXLE("trailer axle"),
    TOW_RATING("tow rating"),
    TONGUE_RATING("tongue rating of the hitch"),
    COMBINATION("vehicle and trailer together");

    private final String words;

    LimitKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
