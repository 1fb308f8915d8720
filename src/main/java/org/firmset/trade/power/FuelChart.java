package org.firmset.trade.power;

import java.util.List;

/**
 * The fuel a generator burns at a quarter, half, three quarters and all of its rated power, as its sheet says; read between
 * along straight lines, under a quarter as at a quarter (check EN-08).
 *
 * @param ratedWatts over 0 to 1 million
 * @param litresPerHour four figures, a quarter first, each 0 to 1000
 */
public record FuelChart(double ratedWatts, List<Double> litresPerHour) {
    private static final int QUARTERS = 4;

    public FuelChart {
        litresPerHour = List.copyOf(litresPerHour);
        Must.lieWithin("ratedWatts", ratedWatts, 1, 1e6);
        if (litresPerHour.size() != QUARTERS) {
            throw new IllegalArgumentException("litresPerHour " + litresPerHour + " must be four");
        }
        litresPerHour.forEach(l -> Must.lieWithin("litresPerHour", l, 0, 1000));
    }

    /** @param loadPercent of the rated power, 0 to 100 */
    public double litresPerHour(double loadPercent) {
        Must.lieWithin("loadPercent", loadPercent, 0, 100);
        BrokenLine line = BrokenLine.of(
                25,
                litresPerHour.get(0),
                50,
                litresPerHour.get(1),
                75,
                litresPerHour.get(2),
                100,
                litresPerHour.get(3));
        return line.at(loadPercent);
    }

    /** Litres for each kWh at a load. @param loadPercent of the rated power, over 0 to 100 */
    public double litresPerKilowattHour(double loadPercent) {
        Must.lieWithin("loadPercent", loadPercent, 1, 100);
        return litresPerHour(loadPercent) / (ratedWatts / 1000 * loadPercent / 100);
    }
}
