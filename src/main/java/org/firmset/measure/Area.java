package org.firmset.measure;

import java.math.BigDecimal;

/** An area in square metres. */
public record Area(BigDecimal value) implements Measured {
    public Area {
        value = Measured.normal(value);
    }

    public static Area ofSquareMetres(double value) {
        return new Area(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " m2";
    }
}
