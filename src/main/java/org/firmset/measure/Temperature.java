package org.firmset.measure;

import java.math.BigDecimal;

/** A temperature in degrees Celsius. */
public record Temperature(BigDecimal value) implements Measured {
    public Temperature {
        value = Measured.normal(value);
    }

    public static Temperature ofCelsius(double value) {
        return new Temperature(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " degC";
    }
}
