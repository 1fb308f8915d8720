package org.firmset.spend;

import java.math.BigDecimal;
import org.firmset.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * The part of a cost that one subproject, or one stage of it, bears.
 *
 * @param subproject key of the subproject
 * @param stage key of the stage; null when the cost belongs to the subproject as a whole
 * @param weight above zero, against the other shares of the same line
 */
public record Share(String subproject, @Nullable String stage, BigDecimal weight) {
    public Share {
        weight = Measured.normal(weight);
    }

    /** All of it. */
    public static Share all(String subproject, @Nullable String stage) {
        return new Share(subproject, stage, BigDecimal.ONE);
    }
}
