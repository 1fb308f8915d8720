package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * A receipt taken apart: discount and tax shared over its lines by their amounts, each line then over its shares. The
 * costs of a receipt add up to its {@link Receipt#sum()}, to the cent.
 */
public final class ReceiptCosts {
    private ReceiptCosts() {}

    /**
     * What one share of one line came to, tax and discount included.
     *
     * @param subproject who bears it; null while that has not been said
     * @param quantity its part of the line's quantity, to nine decimals
     */
    public record Cost(
            LineKind kind,
            @Nullable String material,
            @Nullable String subproject,
            @Nullable String stage,
            Money amount,
            BigDecimal quantity) {}

    /** What each line came to, tax and discount included, in the order of the lines. */
    public static List<Money> ofLines(Receipt receipt) {
        List<BigDecimal> weights =
                receipt.lines().stream().map(l -> Cash.amountOf(l.amount())).toList();
        List<Money> discounts = Allocation.split(receipt.discount(), weights);
        List<Money> taxes = Allocation.split(receipt.tax(), weights);
        List<Money> costs = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            costs.add(receipt.lines().get(i).amount().subtract(discounts.get(i)).add(taxes.get(i)));
        }
        return costs;
    }

    /**
     * A receipt with all that is made of it, so that it is made once.
     *
     * @param ofLines what each line came to, tax and discount included
     * @param costs what each share of each line came to, in their order
     * @param paid what of each cost has left the purse
     * @param atOnce what of that left it on the receipt's date; the rest did on the day of its rest
     */
    public record Apart(Receipt receipt, List<Money> ofLines, List<Cost> costs, List<Money> paid, List<Money> atOnce) {}

    public static Apart apart(Receipt receipt) {
        List<Money> ofLines = ofLines(receipt);
        List<Cost> costs = of(receipt, ofLines);
        List<Money> amounts = costs.stream().map(Cost::amount).toList();
        boolean paidDown =
                receipt.state() == ReceiptState.ORDERED || receipt.restPaidOn().isPresent();
        List<Money> atOnce = paidDown ? shared(receipt.deposit(), amounts) : amounts;
        return new Apart(receipt, ofLines, costs, receipt.state() == ReceiptState.ORDERED ? atOnce : amounts, atOnce);
    }

    /** What each share of each line came to, in their order. */
    public static List<Cost> of(Receipt receipt) {
        return of(receipt, ofLines(receipt));
    }

    private static List<Cost> of(Receipt receipt, List<Money> ofLines) {
        List<Cost> costs = new ArrayList<>();
        for (int i = 0; i < ofLines.size(); i++) {
            costs.addAll(shared(receipt.lines().get(i), ofLines.get(i)));
        }
        return costs;
    }

    /** What was paid down goes over the costs by their size, whether the rest is paid or not. */
    private static List<Money> shared(Money paidDown, List<Money> amounts) {
        return amounts.isEmpty()
                ? amounts
                : Allocation.split(
                        paidDown, amounts.stream().map(Cash::amountOf).toList());
    }

    private static List<Cost> shared(ReceiptLine line, Money amount) {
        List<Share> shares = line.shares();
        if (shares.isEmpty()) {
            return List.of(new Cost(line.kind(), line.material(), null, null, amount, line.quantity()));
        }
        List<Money> parts =
                Allocation.split(amount, shares.stream().map(Share::weight).toList());
        List<Cost> costs = new ArrayList<>();
        BigDecimal weights = shares.stream().map(Share::weight).reduce(BigDecimal.ZERO, BigDecimal::add);
        for (int i = 0; i < parts.size(); i++) {
            Share share = shares.get(i);
            BigDecimal quantity = line.quantity().multiply(share.weight()).divide(weights, 9, RoundingMode.HALF_EVEN);
            costs.add(
                    new Cost(line.kind(), line.material(), share.subproject(), share.stage(), parts.get(i), quantity));
        }
        return costs;
    }
}
