package org.firmset.measure;

import java.math.BigDecimal;

/** An energy in watt-hours. */
public record Energy(BigDecimal value) implements Measured {
    public Energy {
        value = Measured.normal(value);
    }

    public static Energy ofWattHours(double value) {
        return new Energy(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.ENERGY;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " Wh";
    }
}
