package org.firmset.trade.trace;

/** How the source of a line is known. */
public enum Known {
    /** Seen in a published text. */
    SEEN("seen"),
    /** Quoted from memory of the standard. */
    MEMORY("from memory"),
    /** A habit of the trade. */
    PRACTICE("common practice, no source"),
    /** Follows from the lines before. */
    ARITHMETIC("arithmetic");

    private final String words;

    Known(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
