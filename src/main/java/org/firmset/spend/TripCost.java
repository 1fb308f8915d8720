package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
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

    /** By what a trip is shared; the rule is kept and named with the shares. */
    public enum Rule implements Worded {
        BY_HOURS("by the hours worked on each"),
        BY_MASS("by the mass brought for each"),
        EQUALLY("in equal parts");

        private final String words;

        Rule(String words) {
            this.words = words;
        }

        @Override
        public String words() {
            return words;
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
        List<BigDecimal> weights = parts.stream().map(p -> weight(rule, p)).toList();
        boolean says = weights.stream().anyMatch(w -> w.signum() != 0);
        List<Money> amounts = Allocation.split(sum(), weights);
        List<Borne> borne = new ArrayList<>();
        for (int i = 0; i < amounts.size(); i++) {
            borne.add(new Borne(parts.get(i), amounts.get(i), says ? rule : Rule.EQUALLY));
        }
        return borne;
    }

    private static BigDecimal weight(Rule rule, Part part) {
        return switch (rule) {
            case BY_HOURS -> BigDecimal.valueOf(part.quarters());
            case BY_MASS -> BigDecimal.valueOf(part.grams());
            case EQUALLY -> BigDecimal.ONE;
        };
    }
}
