package org.firmset.trade.cure;

import org.firmset.measure.Measured;
import org.firmset.measure.Temperature;
import org.firmset.measure.Units;
import org.firmset.trade.trace.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * A day's weather with what follows from it, temperatures in degrees Celsius.
 *
 * @param low lowest of the day and its night
 * @param coldest lowest of that and the nights after it
 */
record PourCase(PourDay given, double air, double high, double low, double coldest, double concrete) {
    /** Hours after finishing in which rain does the most harm at 20 °C (common practice, no source). */
    static final double FIRST_HOURS = 4;

    /** Hours after finishing until rain does no more harm at 20 °C (common practice, no source). */
    static final double SOFT_HOURS = 8;

    private static final double KMH = 3.6;

    /** Fresh concrete that nobody measured is as warm as the air, but no colder than water from the ground. */
    private static final double COLDEST_MIX = 4;

    /** @throws Refusal when inputs contradict each other */
    static PourCase of(PourDay given) {
        double air = given.airNow().amount();
        double high = or(given.airHigh(), air);
        double low = or(given.airLow(), air);
        if (high < air) {
            throw new Refusal("airHigh", high + " degC", "is under the temperature while placing", "Enter more");
        }
        if (low > air) {
            throw new Refusal("airLow", low + " degC", "is over the temperature while placing", "Enter less");
        }
        if (given.water().amount() > given.solids().amount()) {
            throw new Refusal("water", given.water(), "is more than the solids", "Enter less water");
        }
        double concrete = or(given.concreteTemperature(), Math.max(air, COLDEST_MIX));
        double coldest = Math.min(low, or(given.nightLow(), low));
        return new PourCase(given, air, high, low, coldest, concrete);
    }

    private static double or(@Nullable Temperature temperature, double other) {
        return temperature == null ? other : temperature.amount();
    }

    double humidity() {
        return given.humidityPercent().doubleValue() / 100;
    }

    double windKmh() {
        return given.wind().amount() * KMH;
    }

    /** Evaporation in kilograms a square metre and hour, 0 where water would condense. */
    double evaporation() {
        return evaporationAt(windKmh());
    }

    /** The same in another wind, in kilometres an hour. */
    double evaporationAt(double windKmh) {
        return Math.max(0, Evaporation.rate(concrete, air, humidity(), windKmh));
    }

    /** The same by the US form, in pounds a square foot and hour. */
    double usEvaporation() {
        double windMph = Units.in(given.wind(), "mph", Measured.DECIMALS).doubleValue();
        return Math.max(0, Evaporation.usRate(concrete * 1.8 + 32, air * 1.8 + 32, humidity(), windMph));
    }

    /** Half-way between high and low. */
    double mean() {
        return (high + low) / 2;
    }

    /** Whether any hour of the days of protection is cold. */
    boolean isCold() {
        return coldest < ColdWeather.COLD_CELSIUS;
    }

    double leastConcrete() {
        return ColdWeather.leastConcreteCelsius(given.leastDimension().amount());
    }

    int protectionDays() {
        return given.exposure().protectionDays(given.cement(), given.accelerated());
    }

    /** Days in a row with a mean under 4.4 °C, this one counted if it is one. */
    int coldDays() {
        return mean() < ColdWeather.COLD_CELSIUS ? given.coldDaysBefore() + 1 : 0;
    }

    /** Hours at the air's temperature that age as much as these at 20 °C, never fewer; infinite in frost. */
    double hoursLike(double hoursAtTwenty) {
        double slower = Strength.ageFactor(StrengthCurve.REFERENCE_CELSIUS) / Strength.ageFactor(air);
        return hoursAtTwenty * Math.max(1, slower);
    }

    /** Hours at a temperature until the concrete survives frost; infinite in frost. */
    double hoursToSurviveFreezing(double celsius) {
        return ColdWeather.hoursToSurviveFreezing(given.strength().amount(), given.cement(), celsius);
    }

    Batch batch() {
        return new Batch(
                given.solids().amount(),
                or(given.solidsTemperature(), air),
                given.water().amount());
    }
}
