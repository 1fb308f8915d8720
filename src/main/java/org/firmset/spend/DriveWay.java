package org.firmset.spend;

import org.firmset.measure.Worded;

/** How people count the drive of a trip that was made. */
public enum DriveWay implements Worded {
    SUM("as one sum"),
    RATE("by a rate for the distance"),
    FUEL("by the fuel it took"),
    ON_RECEIPTS("not here: its fuel has receipts of its own");

    private final String words;

    DriveWay(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
