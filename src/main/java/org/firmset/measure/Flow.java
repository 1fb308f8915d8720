package org.firmset.measure;

import java.math.BigDecimal;

/** A flow of liquid in litres a minute. */
public record Flow(BigDecimal value) implements Measured {
    public Flow {
        value = Measured.normal(value);
    }

    public static Flow ofLitresPerMinute(double value) {
        return new Flow(BigDecimal.valueOf(value));
    }

    @Override
    public Dimension dimension() {
        return Dimension.FLOW;
    }

    @Override
    public String toString() {
        return value.toPlainString() + " L/min";
    }
}
