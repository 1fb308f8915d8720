package org.firmset.measure;

import java.math.BigDecimal;

/** A volume in cubic metres. */
public record Volume(BigDecimal value) implements Measured {
    public Volume {
        value = Measured.normal(value);
    }

    public static Volume ofCubicMetres(double value) {
        return new Volume(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " m3";
    }
}
