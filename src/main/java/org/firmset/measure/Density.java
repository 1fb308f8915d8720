package org.firmset.measure;

import java.math.BigDecimal;

/** A density in kilograms a cubic metre. */
public record Density(BigDecimal value) implements Measured {
    public Density {
        value = Measured.normal(value);
    }

    public static Density ofKilogramsPerCubicMetre(double value) {
        return new Density(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.DENSITY;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " kg/m3";
    }
}
