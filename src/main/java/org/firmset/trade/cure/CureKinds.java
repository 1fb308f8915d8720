package org.firmset.trade.cure;

import java.util.List;
import org.firmset.trade.trace.Kind;

/** The calculators of this room. */
public final class CureKinds {
    /** In the order in which they are offered. */
    public static final List<Kind<?>> ALL = List.of(
            new Kind<>(
                    "cure",
                    "Curing time",
                    "Works out when concrete is strong enough for what comes next, from the temperatures of its dates.",
                    CuringConcrete.class,
                    CuringTime::work),
            new Kind<>(
                    "pour-weather",
                    "Weather for a pour",
                    "Holds a day's heat, wind, cold and rain against the limits for fresh concrete and masonry.",
                    PourDay.class,
                    PourWeather::work));

    private CureKinds() {}
}
