package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.TripSharing;
import org.firmset.measure.Cash;
import org.firmset.measure.Length;
import org.firmset.measure.Worded;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a trip costs besides what it brings.
 *
 * @param drive by rate or by fuel
 * @param food for all people and days
 */
public record TripCost(Drive drive, Money tolls, Money food) {
    private static final BigDecimal QUARTERS_OF_AN_HOUR = BigDecimal.valueOf(4);

    /** How the drive is reckoned; one way only, or wear would count twice. */
    public sealed interface Drive {
        Money cost();
    }

    /**
     * A rate for fuel, wear and everything, such as a tax office's of that year.
     *
     * @param distance there and back
     * @param rate in units of money for each {@code per}
     */
    public record ByRate(Length distance, BigDecimal rate, String currency, Length per) implements Drive {
        @Override
        public Money cost() {
            return Cash.of(distance.value().multiply(rate).divide(per.value(), 2, RoundingMode.HALF_UP), currency);
        }
    }

    /**
     * Fuel only.
     *
     * @param distance there and back
     * @param used fuel for each {@code per}, in the unit the price is for
     * @param price of one unit of fuel
     */
    public record ByFuel(Length distance, BigDecimal used, Length per, BigDecimal price, String currency)
            implements Drive {
        @Override
        public Money cost() {
            BigDecimal scaled = distance.value().multiply(used).multiply(price);
            return Cash.of(scaled.divide(per.value(), 2, RoundingMode.HALF_UP), currency);
        }
    }

    /** As the homestead's owners write it, with all that is in it. */
    public record Flat(Money cost) implements Drive {}

    /** The fuel stands on receipts of its own, so nothing is counted here. */
    public record OnReceipts(String currency) implements Drive {
        @Override
        public Money cost() {
            return Cash.ofCents(0, currency);
        }
    }

    /** By what a trip is shared; the rule is kept and named with the shares. */
    public enum Rule implements Worded {
        BY_HOURS("by the hours worked on each"),
        BY_MASS("by the mass brought for each"),
        EQUALLY("in equal parts");

        private final String words;

        Rule(String words) {
            this.words = words;
        }

        /** What the homestead's owners chose. */
        public static Rule of(TripSharing chosen) {
            return switch (chosen) {
                case BY_HOURS -> BY_HOURS;
                case BY_MASS -> BY_MASS;
            };
        }

        @Override
        public String words() {
            return words;
        }

        /** What a part counts under this rule: hours, kilograms, or 1. */
        BigDecimal weight(Part part) {
            return switch (this) {
                case BY_HOURS -> BigDecimal.valueOf(part.quarters()).divide(QUARTERS_OF_AN_HOUR);
                case BY_MASS -> BigDecimal.valueOf(part.grams(), 3);
                case EQUALLY -> BigDecimal.ONE;
            };
        }

        /** This one, or equally when it says nothing of any of these. */
        public Rule saying(List<Part> parts) {
            return parts.stream().allMatch(p -> weight(p).signum() == 0) ? EQUALLY : this;
        }
    }

    /**
     * What one stage or subproject had of a trip.
     *
     * @param stage null for the subproject as a whole
     * @param quarters labour on it in quarter-hours
     * @param grams brought for it
     */
    public record Part(String subproject, @Nullable String stage, long quarters, long grams) {}

    /** What one part bears, and by which rule: the one asked for, or equally when that says nothing. */
    public record Borne(Part part, Money amount, Rule rule) {}

    public Money sum() {
        return drive.cost().add(tolls).add(food);
    }

    /** @param parts at least one, in a lasting order: the earlier bears the odd cent */
    public List<Borne> shared(Rule rule, List<Part> parts) {
        Rule used = rule.saying(parts);
        List<Money> amounts =
                Allocation.split(sum(), parts.stream().map(used::weight).toList());
        List<Borne> borne = new ArrayList<>();
        for (int i = 0; i < amounts.size(); i++) {
            borne.add(new Borne(parts.get(i), amounts.get(i), used));
        }
        return borne;
    }
}
