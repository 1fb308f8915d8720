package org.firmset.trade.trace;

import java.time.LocalDate;
import org.firmset.measure.Area;
import org.firmset.measure.Density;
import org.firmset.measure.Energy;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.Volume;

/** A value in a result, with what it takes to show it in either system of units. */
public sealed interface Amount {

    /**
     * A measured quantity.
     *
     * @param us symbol of the unit it is shown in to people who use US customary units; see {@link Show} for "ft in"
     * @param metric the same for everybody else
     */
    record Quantity(Measured measured, String us, String metric) implements Amount {}

    /** Things that are counted: 78 blocks. */
    record Count(long number, String noun) implements Amount {}

    /**
     * Packs that have to be there: shown rounded up to whole ones, added up with others before that.
     *
     * @param exact 0 or more, not yet rounded
     */
    record Packs(double exact, String noun) implements Amount {
        /** The whole packs that hold it. */
        public long whole() {
            return Whole.up(exact);
        }
    }

    /** A number with a unit that is the same everywhere, or none: 0.779, 9.6 h, 12 d, 10 %. */
    record Number(double value, int decimals, String unit) implements Amount {}

    /** A number that has one unit for people who use US customary units and another for everybody else: lb/ft, kg/m. */
    record Both(Number metric, Number us) implements Amount {}

    /** A date. */
    record On(LocalDate date) implements Amount {}

    /** A choice in words: "NORMAL cement". */
    record Word(String text) implements Amount {}

    /** A length in metres, shown as feet and inches or metres. */
    static Amount length(double metres) {
        return new Quantity(Length.ofMetres(metres), Show.FEET_AND_INCHES, "m");
    }

    static Amount length(Length length) {
        return new Quantity(length, Show.FEET_AND_INCHES, "m");
    }

    /** A length in metres, shown as feet or metres with decimals: a head of water. */
    static Amount head(double metres) {
        return new Quantity(Length.ofMetres(metres), "ft", "m");
    }

    /** A length in metres that is less than a hand: a bar, a bore, a shell. */
    static Amount thin(double metres) {
        return new Quantity(Length.ofMetres(metres), "in", "mm");
    }

    static Amount area(double squareMetres) {
        return new Quantity(Area.ofSquareMetres(squareMetres), "ft2", "m2");
    }

    /** A small area in square metres: the section of a bar. */
    static Amount section(double squareMetres) {
        return new Quantity(Area.ofSquareMetres(squareMetres), "in2", "cm2");
    }

    /** A volume in cubic metres of what is poured or packed. */
    static Amount volume(double cubicMetres) {
        return new Quantity(Volume.ofCubicMetres(cubicMetres), "ft3", cubicMetres < 0.1 ? "L" : "m3");
    }

    /** A volume in cubic metres of what comes by the truck. */
    static Amount bulk(double cubicMetres) {
        return new Quantity(Volume.ofCubicMetres(cubicMetres), "yd3", "m3");
    }

    /** A volume of liquid in cubic metres. */
    static Amount liquid(double cubicMetres) {
        return new Quantity(Volume.ofCubicMetres(cubicMetres), "gal", "L");
    }

    static Amount mass(double kilograms) {
        return new Quantity(Mass.ofKilograms(kilograms), "lb", "kg");
    }

    /** A mass in kilograms of what comes by the truck: short tons or tonnes. */
    static Amount tonnes(double kilograms) {
        return new Quantity(Mass.ofKilograms(kilograms), "ton", "t");
    }

    /** A pressure in pascals of water or air. */
    static Amount pressure(double pascals) {
        return new Quantity(Pressure.ofPascals(pascals), "psi", "kPa");
    }

    /** A pressure in pascals on the ground. */
    static Amount bearing(double pascals) {
        return new Quantity(Pressure.ofPascals(pascals), "lb/ft2", "kPa");
    }

    /** A strength or stress in pascals. */
    static Amount strength(double pascals) {
        return new Quantity(Pressure.ofPascals(pascals), "psi", "MPa");
    }

    static Amount temperature(double celsius) {
        return new Quantity(Temperature.ofCelsius(celsius), "degF", "degC");
    }

    static Amount flow(double litresPerMinute) {
        return new Quantity(Flow.ofLitresPerMinute(litresPerMinute), "gpm", "L/min");
    }

    /** The speed of wind or vehicles in metres a second. */
    static Amount speed(double metresPerSecond) {
        return new Quantity(Speed.ofMetresPerSecond(metresPerSecond), "mph", "km/h");
    }

    /** The speed of water in metres a second. */
    static Amount velocity(double metresPerSecond) {
        return new Quantity(Speed.ofMetresPerSecond(metresPerSecond), "ft/s", "m/s");
    }

    static Amount density(double kilogramsPerCubicMetre) {
        return new Quantity(Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre), "lb/ft3", "kg/m3");
    }

    static Amount energy(double wattHours) {
        return new Quantity(Energy.ofWattHours(wattHours), "Wh", "Wh");
    }

    static Amount power(double watts) {
        return new Quantity(Power.ofWatts(watts), "W", "W");
    }

    static Amount count(long number, String noun) {
        return new Count(number, noun);
    }

    static Amount packs(double exact, String noun) {
        return new Packs(exact, noun);
    }

    /** A ratio without a unit. */
    static Amount ratio(double value) {
        return new Number(value, 3, "");
    }

    /** @param share 0.1 is shown as 10 % */
    static Amount percent(double share) {
        return new Number(share * 100, 1, "%");
    }

    /** Mass of a metre in kilograms. */
    static Amount massPerLength(double kilograms) {
        return new Both(new Number(kilograms, 3, "kg/m"), new Number(kilograms * 0.3048 / 0.45359237, 3, "lb/ft"));
    }

    /** Mass of a square metre in kilograms. */
    static Amount massPerArea(double kilograms) {
        double pounds = kilograms * 0.3048 * 0.3048 / 0.45359237;
        return new Both(new Number(kilograms, 1, "kg/m2"), new Number(pounds, 1, "lb/ft2"));
    }

    /** Kilograms of water that a square metre gives off in an hour. */
    static Amount evaporation(double kilograms) {
        double pounds = kilograms * 0.3048 * 0.3048 / 0.45359237;
        return new Both(new Number(kilograms, 2, "kg/m2/h"), new Number(pounds, 3, "lb/ft2/h"));
    }

    /** How many for a square metre. */
    static Amount perArea(double number) {
        return new Both(new Number(number, 2, "a m2"), new Number(number * 0.3048 * 0.3048, 3, "a ft2"));
    }

    static Amount hours(double hours) {
        return new Number(hours, 2, "h");
    }

    static Amount minutes(double minutes) {
        return new Number(minutes, 0, "min");
    }

    static Amount days(double days) {
        return new Number(days, 2, "d");
    }

    static Amount number(double value, int decimals, String unit) {
        return new Number(value, decimals, unit);
    }

    static Amount word(String text) {
        return new Word(text);
    }

    static Amount on(LocalDate date) {
        return new On(date);
    }
}
