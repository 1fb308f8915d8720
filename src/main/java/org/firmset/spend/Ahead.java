package org.firmset.spend;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Something that will still cost money and is neither paid nor on order. */
public interface Ahead {
    /** Who bears it; null while that has not been said. */
    @Nullable
    String subproject();

    /** Null for what belongs to the subproject as a whole. */
    @Nullable
    String stage();

    LineKind kind();

    /** Key of the material; otherwise what it is, the same for all of a sort. */
    String what();

    Money expected();

    /** At the lowest price anybody asked lately. */
    Money low();

    /** At the highest price anybody asked lately. */
    Money high();

    /** @param percent the rise of its price; negative for a fall */
    default Money rise(BigDecimal percent) {
        return Cash.of(
                Cash.amountOf(expected()).multiply(percent).movePointLeft(2).setScale(2, RoundingMode.HALF_EVEN),
                expected().getCurrency().getCurrencyCode());
    }
}
