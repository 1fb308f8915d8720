package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.firmset.measure.Cash;
import org.firmset.season.words.WordTable;
import org.firmset.spend.LineKind;
import org.javamoney.moneta.Money;

/** Numbers of things and what one of them costs, in words. */
final class Counts {
    private Counts() {}

    /** "12 packs", "0.333 drives"; a dash for what is not counted. */
    static String show(LineKind kind, BigDecimal quantity) {
        if (quantity.signum() == 0) {
            return WordTable.NONE;
        }
        String unit = kind == LineKind.FUEL ? "drive" : "pack";
        BigDecimal rounded = quantity.setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.toPlainString() + " " + unit + (rounded.compareTo(BigDecimal.ONE) == 0 ? "" : "s");
    }

    /** A dash when there is none to divide it by. */
    static String each(MoneyReport report, Money amount, BigDecimal quantity) {
        return quantity.signum() <= 0
                ? WordTable.NONE
                : report.show(
                        Cash.of(Cash.amountOf(amount).divide(quantity, 2, RoundingMode.HALF_EVEN), report.currency()));
    }
}
