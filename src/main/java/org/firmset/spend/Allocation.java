package org.firmset.spend;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;

/**
 * Shares an amount by weights so that the parts add up to it, to the smallest coin. Thread-safe.
 *
 * <p>Largest remainder: each part is first its exact share rounded down, and the coins still missing go one each to the
 * parts with the largest remainders, to the earlier one when two are equal. So no part is a whole coin off its exact
 * share, a part without weight gets nothing, and a refund is shared exactly like the payment, with the sign changed.
 * Common practice, no source.
 */
public final class Allocation {
    private Allocation() {}

    /**
     * {@link #split(Money, int, List)} with the digits the currency usually has (2 for USD, 0 for JPY), but to the
     * hundredth, to which all amounts are kept, when its coin is smaller or the whole has parts of a coin: taxes and plans
     * come to hundredths of a yen, too.
     */
    public static List<Money> split(Money whole, List<BigDecimal> weights) {
        int usual = whole.getCurrency().getDefaultFractionDigits();
        int written = Cash.amountOf(whole).stripTrailingZeros().scale();
        return split(whole, usual < 0 || written > usual ? 2 : Math.min(usual, 2), weights);
    }

    /**
     * The parts, in the order of the weights.
     *
     * @param whole what is shared; negative for a refund
     * @param digits decimals of the smallest coin
     * @param weights in any one unit, at least one. A negative weight turns its part around, as a returned line does
     *     among bought ones. When they add up to nothing their sizes count, and when all are zero the parts are equal.
     * @throws ArithmeticException when the whole has more decimals than the coin
     * @throws IllegalArgumentException when there is no weight
     */
    public static List<Money> split(Money whole, int digits, List<BigDecimal> weights) {
        BigInteger coins = whole.getNumber()
                .numberValueExact(BigDecimal.class)
                .setScale(digits, RoundingMode.UNNECESSARY)
                .unscaledValue();
        return coins(coins, weights).stream()
                .map(part -> Money.of(new BigDecimal(part, digits), whole.getCurrency()))
                .toList();
    }

    /** {@link #split(Money, int, List)} for whole coins. */
    static List<BigInteger> coins(BigInteger whole, List<BigDecimal> weights) {
        if (weights.isEmpty()) {
            throw new IllegalArgumentException("the amount [" + whole + "] cannot be shared over no weights");
        }
        if (weights.size() == 1) {
            return List.of(whole);
        }
        if (whole.signum() == 0) {
            return Collections.nCopies(weights.size(), BigInteger.ZERO);
        }
        if (whole.signum() < 0) {
            return coins(whole.negate(), weights).stream()
                    .map(BigInteger::negate)
                    .toList();
        }
        return shared(whole, usable(wholeNumbers(weights)));
    }

    private static List<BigInteger> wholeNumbers(List<BigDecimal> weights) {
        int scale = weights.stream().mapToInt(BigDecimal::scale).max().orElseThrow();
        return weights.stream().map(w -> w.setScale(scale).unscaledValue()).toList();
    }

    /** The same proportions with a sum above zero. */
    private static List<BigInteger> usable(List<BigInteger> weights) {
        int sign = sum(weights).signum();
        if (sign != 0) {
            return sign > 0 ? weights : weights.stream().map(BigInteger::negate).toList();
        }
        List<BigInteger> sizes = weights.stream().map(BigInteger::abs).toList();
        return sum(sizes).signum() > 0
                ? sizes
                : weights.stream().map(w -> BigInteger.ONE).toList();
    }

    private static List<BigInteger> shared(BigInteger whole, List<BigInteger> weights) {
        BigInteger sum = sum(weights);
        List<BigInteger> parts = new ArrayList<>();
        List<BigInteger> remainders = new ArrayList<>();
        for (BigInteger weight : weights) {
            BigInteger exact = whole.multiply(weight);
            BigInteger remainder = exact.mod(sum);
            parts.add(exact.subtract(remainder).divide(sum));
            remainders.add(remainder);
        }
        int missing = whole.subtract(sum(parts)).intValueExact();
        IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparing(remainders::get).reversed())
                .limit(missing)
                .forEach(i -> parts.set(i, parts.get(i).add(BigInteger.ONE)));
        return parts;
    }

    private static BigInteger sum(List<BigInteger> numbers) {
        return numbers.stream().reduce(BigInteger.ZERO, BigInteger::add);
    }
}
