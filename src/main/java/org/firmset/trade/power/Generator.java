package org.firmset.trade.power;

import java.time.Duration;
import java.time.LocalTime;

/**
 * A generator. It feeds the tools first and charges the battery with the rest. Run it outdoors only, well away from openings,
 * exhaust turned away; have its connection made by a licensed electrician where that is required.
 *
 * @param ratedWatts 0 for none, to 1 million
 * @param litresPerKilowattHour fuel, 0 to 10; {@link FuelChart} finds it
 * @param pricePerLitre in any one currency, 0 or more
 * @param from when it may start, such as after the quiet hours
 * @param mostMinutes how long it may run in a day from then on, not beyond midnight
 */
public record Generator(
        double ratedWatts, double litresPerKilowattHour, double pricePerLitre, LocalTime from, int mostMinutes) {
    public static final Generator NONE = new Generator(0, 0, 0, LocalTime.MIDNIGHT, 0);

    public Generator {
        Must.lieWithin("ratedWatts", ratedWatts, 0, 1e6);
        Must.lieWithin("litresPerKilowattHour", litresPerKilowattHour, 0, 10);
        Must.lieWithin("pricePerLitre", pricePerLitre, 0, 1e9);
        long left = Duration.ofDays(1).toMinutes() - from.toSecondOfDay() / 60;
        Must.lieWithin("mostMinutes", mostMinutes, 0, left);
    }

    /** Fuel for some energy, in litres. */
    public double litres(double wattHours) {
        return wattHours / 1000 * litresPerKilowattHour;
    }

    /** Cost of that fuel, in the currency of its price. */
    public double cost(double wattHours) {
        return litres(wattHours) * pricePerLitre;
    }
}
