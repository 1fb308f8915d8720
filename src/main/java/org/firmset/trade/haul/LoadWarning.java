package org.firmset.trade.haul;

/**
 * Something about a load that no rating forbids and that a careful driver mends.
 *
 * @param grams how much is missing or too much
 */
public record LoadWarning(Kind kind, long grams) {
    /** What it is about. */
    public enum Kind {
        FRONT_LIGHT("The front axle carries notably less than when the vehicle is empty: steering and brakes get light."
                + " Move load forward, or take mass off the tongue."),
        TONGUE_LIGHT("Less than 10 % of the trailer rests on the hitch: it may sway. Move load forward on the deck."),
        TONGUE_HEAVY("More than 15 % of the trailer rests on the hitch: it presses the vehicle's tail down."
                + " Move load back on the deck."),
        TONGUE_NOT_MEASURED(
                "The deck was not measured, so the tongue is taken as the trailer's usual percent. Weigh it once loaded.");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
