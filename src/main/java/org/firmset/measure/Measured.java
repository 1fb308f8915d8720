package org.firmset.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A quantity kept in the unit of its {@link Dimension}, exact to nine decimals. Made from text by {@link Units#parse}.
 */
public sealed interface Measured
        permits Mass, Volume, Length, Area, Energy, Power, Temperature, Pressure, Flow, Speed, Density {
    int DECIMALS = 9;

    /** The value in the stored unit of the {@link #dimension()}. */
    BigDecimal value();

    Dimension dimension();

    /** The value in the stored unit, for arithmetic. */
    default double amount() {
        return value().doubleValue();
    }

    /** The same value however it was written: nine decimals at most, no zeros at the end. */
    static BigDecimal normal(BigDecimal value) {
        BigDecimal rounded = value.setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
    }
}
