package org.firmset.measure;

import java.math.BigDecimal;

/** A speed in metres a second. */
public record Speed(BigDecimal value) implements Measured {
    public Speed {
        value = Measured.normal(value);
    }

    public static Speed ofMetresPerSecond(double value) {
        return new Speed(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPEED;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " m/s";
    }
}
