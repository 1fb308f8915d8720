package org.firmset.trade.cure;

import java.time.LocalDate;
import java.util.Arrays;
import org.firmset.trade.climate.DailyTemperature;

/** Asks for the temperature of a date once, however many ways of counting want it. Not thread-safe. */
final class RememberedTemperature implements DailyTemperature {
    private final DailyTemperature temperature;
    private final long firstDay;
    private final double[] known;

    /** @param days how many dates are remembered, from the first on; others may not be asked for */
    RememberedTemperature(DailyTemperature temperature, LocalDate first, int days) {
        this.temperature = temperature;
        firstDay = first.toEpochDay();
        known = new double[days];
        Arrays.fill(known, Double.NaN);
    }

    @Override
    public double celsiusOn(LocalDate date) {
        int day = Math.toIntExact(date.toEpochDay() - firstDay);
        if (Double.isNaN(known[day])) {
            known[day] = temperature.celsiusOn(date);
        }
        return known[day];
    }
}
