package org.firmset.measure;

import java.math.BigDecimal;

/** A mass in kilograms. */
public record Mass(BigDecimal value) implements Measured {
    public Mass {
        value = Measured.normal(value);
    }

    public static Mass ofKilograms(double value) {
        return new Mass(BigDecimal.valueOf(value));
    }

    public static Mass ofGrams(long grams) {
        return new Mass(BigDecimal.valueOf(grams, 3));
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " kg";
    }
}
