package org.firmset.season.ask;

import java.time.LocalDate;
import java.util.List;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** What more power would bring the whole season; each figure comes of a plan that was made for it and checked. */
public sealed interface MorePower {

    /** What is added, each alone. */
    enum Kind {
        /** Wh of the same battery more. */
        BATTERY,
        /** W of panels more that stand like the others. */
        PANELS,
        /** Hours a day that the generator may run, all together. */
        GENERATOR
    }

    /** @param why in a sentence */
    record Nothing(String why) implements MorePower {}

    /**
     * Even if work drew nothing, no plan was found that is better in the style of the plan.
     *
     * @param proven whether it is certain that there is none that is better in what the style asks for first
     * @param foundAgain with the power there is, planning again found a plan that is better than the one that is shown
     */
    record NotLimiting(String style, boolean proven, boolean foundAgain) implements MorePower {}

    /**
     * Power limits the season.
     *
     * @param unlimited what a plan brings in which work draws nothing
     * @param ways one for each kind of which there can be more
     * @param foundAgain planning again with the power there is found a better plan than the one that is shown; gains are
     *     counted from that
     */
    record Limiting(Gain unlimited, List<Way> ways, boolean foundAgain, String currency) implements MorePower {
        public Limiting {
            ways = List.copyOf(ways);
        }
    }

    /** One kind of more power, alone. */
    sealed interface Way {
        Kind kind();

        /**
         * @param amount the least that was found to bring the gain: Wh or W more, or hours a day all together
         * @param enough whether it brings as much as power without limit
         * @param cost of what is added, or of the fuel that is burnt more; null when no price is written down
         */
        record Found(
                Kind kind,
                int amount,
                boolean enough,
                Gain gain,
                @Nullable Money cost) implements Way {}

        /** @param upTo as much does not bring anything */
        record Useless(Kind kind, int upTo) implements Way {}
    }

    /**
     * What a plan is better by.
     *
     * @param finishes subprojects that finish on another date, in their order
     * @param trips how many fewer it makes; below zero for more
     * @param haulingCents how much less trips, extra runs and deliveries cost; below zero for more
     * @param fuelCents how much less the generator burns; below zero for more
     * @param whole names of stages that were done over several trips and are now done in one
     */
    record Gain(List<Finish> finishes, int trips, long haulingCents, long fuelCents, List<String> whole) {
        public Gain {
            finishes = List.copyOf(finishes);
            whole = List.copyOf(whole);
        }
    }

    /** A finish that moves. */
    record Finish(String subproject, LocalDate now, LocalDate then) {}
}
