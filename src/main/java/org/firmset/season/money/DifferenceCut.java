package org.firmset.season.money;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.javamoney.moneta.Money;

/**
 * Differences from a budget that count, and small ones that are told together. Each difference is in one of the two, and
 * both are in the order of all.
 */
record DifferenceCut(List<BudgetDifference> great, List<BudgetDifference> small) {
    /** More are not taken in at a look, and fill the screen of a phone many times over. */
    static final int MOST_SHOWN = 15;

    /** Under so many nothing is folded: a page of a few small ones would tell nothing at all. */
    static final int LEAST_SHOWN = 5;

    /** To fold fewer would cost more than it saves. */
    static final int LEAST_FOLDED = 4;

    /** What is folded is together no more than that of the budget, where {@link #MOST_SHOWN} allows it. */
    private static final double LITTLE = 0.01;

    DifferenceCut {
        great = List.copyOf(great);
        small = List.copyOf(small);
    }

    /**
     * As few as are needed for the rest to be little against the budget. What rises by its price and falls by its quantity
     * weighs as much as the greater of the two: its sum alone would hide both.
     *
     * @param budget what everything was to cost
     */
    static DifferenceCut of(List<BudgetDifference> all, Money budget) {
        List<BudgetDifference> byWeight = all.stream()
                .sorted(Comparator.comparing(DifferenceCut::weight).reversed())
                .toList();
        int shown = shown(byWeight, budget);
        if (all.size() - shown < LEAST_FOLDED) {
            return new DifferenceCut(all, List.of());
        }
        Set<Thing> great =
                byWeight.stream().limit(shown).map(BudgetDifference::thing).collect(Collectors.toSet());
        return new DifferenceCut(
                all.stream().filter(d -> great.contains(d.thing())).toList(),
                all.stream().filter(d -> !great.contains(d.thing())).toList());
    }

    private static int shown(List<BudgetDifference> byWeight, Money budget) {
        Money little = budget.abs().multiply(LITTLE);
        Money rest = budget.subtract(budget);
        int shown = byWeight.size();
        while (shown > LEAST_SHOWN) {
            rest = rest.add(weight(byWeight.get(shown - 1)));
            if (rest.isGreaterThan(little)) {
                break;
            }
            shown--;
        }
        return Math.min(shown, MOST_SHOWN);
    }

    private static Money weight(BudgetDifference one) {
        return Stream.of(
                        one.difference().sum(),
                        one.difference().price(),
                        one.difference().quantity(),
                        one.difference().scope())
                .map(Money::abs)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }
}
