package org.firmset.spend;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * Work and money on one day held against the plan, by the terms of EIA-748. Indices are rounded only when shown, sums of
 * money once, at the end, half to even.
 *
 * @param planned PV: what the work planned to be finished by now was to cost
 * @param earned EV: what the work finished by now was to cost; a stage counts when it is finished, not before
 * @param actual AC: what that work cost
 * @param budget BAC: what everything was to cost
 */
public record EarnedValue(Money planned, Money earned, Money actual, Money budget) {
    /** CV = EV - AC: below zero when the work cost more than planned. */
    public Money costVariance() {
        return earned.subtract(actual);
    }

    /** SV = EV - PV: below zero when less is finished than planned. */
    public Money scheduleVariance() {
        return earned.subtract(planned);
    }

    /** CPI = EV / AC: worth of work for each unit of money; empty before anything was spent. */
    public Optional<BigDecimal> costIndex() {
        return ratio(earned, actual);
    }

    /** SPI = EV / PV; empty before anything was to be finished. */
    public Optional<BigDecimal> scheduleIndex() {
        return ratio(earned, planned);
    }

    /** EAC = BAC / CPI: what everything comes to when the rest costs as the work so far; empty before anything is earned. */
    public Optional<Money> estimateAtCompletion() {
        return earned.isZero()
                ? Optional.empty()
                : Optional.of(Cash.of(
                        Cash.amountOf(budget)
                                .multiply(Cash.amountOf(actual))
                                .divide(Cash.amountOf(earned), 2, RoundingMode.HALF_EVEN),
                        budget.getCurrency().getCurrencyCode()));
    }

    /** ETC = EAC - AC: what is still to come at that rate. */
    public Optional<Money> estimateToComplete() {
        return estimateAtCompletion().map(e -> e.subtract(actual));
    }

    /** VAC = BAC - EAC: below zero when it will end over the budget. */
    public Optional<Money> varianceAtCompletion() {
        return estimateAtCompletion().map(budget::subtract);
    }

    /** TCPI = (BAC - EV) / (BAC - AC): the index the rest must reach to hold the budget; empty when no money is left. */
    public Optional<BigDecimal> toCompleteIndex() {
        return budget.isGreaterThan(actual)
                ? ratio(budget.subtract(earned), budget.subtract(actual))
                : Optional.empty();
    }

    private static Optional<BigDecimal> ratio(Money part, Money of) {
        return of.isZero()
                ? Optional.empty()
                : Optional.of(Cash.amountOf(part).divide(Cash.amountOf(of), MathContext.DECIMAL64));
    }

    /** The cost of the finished work in plain words: "over by $300.00", "under by ...", "as planned". */
    public String costInWords() {
        return inWords(costVariance(), "under", "over");
    }

    /** What is finished in plain words, as worth of work: "behind by $500.00", "ahead by ...", "as planned". */
    public String workInWords() {
        return inWords(scheduleVariance(), "ahead", "behind");
    }

    private static String inWords(Money variance, String above, String below) {
        if (variance.isZero()) {
            return "as planned";
        }
        String amount =
                Cash.show(Math.abs(Cash.cents(variance)), variance.getCurrency().getCurrencyCode());
        return (variance.isPositive() ? above : below) + " by " + amount;
    }
}
