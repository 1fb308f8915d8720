package org.firmset.trade.haul;

/**
 * What a load breaks, and by how much.
 *
 * @param where the limit, or the name of the bay
 * @param by over 0, in the unit of the kind
 */
public record Excess(Kind kind, String where, long by) {
    /** What is broken. */
    public enum Kind {
        /** A mass limit; in grams. */
        MASS("is over by"),
        /** Missing on the hitch to a tenth of the loaded trailer; in grams. */
        TONGUE_LIGHT("is under 10 % by"),
        /** On the hitch over 15 % of the loaded trailer; in grams. */
        TONGUE_HEAVY("is over 15 % by"),
        /** Room; in millilitres. */
        ROOM("has too little room by"),
        /** A piece that is longer than the longest its bay takes; in millimetres. */
        LENGTH("holds a piece that is too long by");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The verb of the sentence: "rear axle is over by ...". */
        public String words() {
            return words;
        }
    }
}
