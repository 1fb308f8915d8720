package org.firmset.measure;

import java.math.BigDecimal;

/** A pressure or stress in pascals. */
public record Pressure(BigDecimal value) implements Measured {
    public Pressure {
        value = Measured.normal(value);
    }

    public static Pressure ofPascals(double value) {
        return new Pressure(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRESSURE;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " Pa";
    }
}
