package org.firmset.measure;

import java.math.BigDecimal;

/** A length in metres. */
public record Length(BigDecimal value) implements Measured {
    public Length {
        value = Measured.normal(value);
    }

    public static Length ofMetres(double value) {
        return new Length(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " m";
    }
}
