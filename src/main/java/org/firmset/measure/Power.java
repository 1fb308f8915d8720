package org.firmset.measure;

import java.math.BigDecimal;

/** A power in watts. */
public record Power(BigDecimal value) implements Measured {
    public Power {
        value = Measured.normal(value);
    }

    public static Power ofWatts(double value) {
        return new Power(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " W";
    }
}
