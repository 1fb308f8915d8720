package org.firmset.season.words;

import java.math.BigDecimal;
import java.util.Locale;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.Volume;

/** Amounts of water as people say them. */
public final class WaterMeasure {
    private WaterMeasure() {}

    /** Litres, or gallons where people think in those. */
    public static String show(Volume volume, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        BigDecimal small = Units.in(volume, us ? "gal" : "L", 1);
        boolean whole = small.stripTrailingZeros().scale() <= 0 || small.compareTo(BigDecimal.valueOf(100)) >= 0;
        return String.format(Locale.ROOT, whole ? "%,.0f %s" : "%,.1f %s", small, us ? "gal" : "L");
    }
}
