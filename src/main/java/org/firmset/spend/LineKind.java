package org.firmset.spend;

import org.firmset.measure.Worded;

/** What a line of a receipt was paid for. */
public enum LineKind implements Worded {
    MATERIAL("material"),
    TOOL("tool"),
    FEE("fee"),
    FUEL("fuel"),
    /** Comes back when the pallet or the hired tool does; held apart from what was spent until it is lost. */
    DEPOSIT("refundable deposit"),
    OTHER("other");

    private final String words;

    LineKind(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
