package org.firmset.homestead;

import org.firmset.measure.Worded;

/** By what the cost of a trip is shared over the stages. */
public enum TripSharing implements Worded {
    BY_HOURS("by the hours worked on each"),
    BY_MASS("by the mass brought for each");

    private final String words;

    TripSharing(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
