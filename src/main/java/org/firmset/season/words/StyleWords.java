package org.firmset.season.words;

import org.firmset.plan.Style;

/** What the styles are called on screen and in the terminal. */
public final class StyleWords {
    private StyleWords() {}

    public static String of(Style style) {
        return switch (style) {
            case SOONEST -> "Finish soonest";
            case FEWEST_TRIPS -> "Fewest trips";
            case LEAST_MONEY -> "Least money";
            case LEAST_CHANGE -> "Least change";
        };
    }
}
