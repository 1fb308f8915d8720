package org.firmset.spend;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.Measured;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.javamoney.moneta.Money;

/**
 * Drives in the units people count them in: so much for a mile or a kilometre; miles on a gallon or litres for 100 km.
 * What is said of a drive stands on its receipt and is read back for the next one.
 */
public record DriveWords(UnitSystem units, String currency) {
    private static final int DECIMALS = 3;
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";

    /** What was typed of a drive, to be offered again; empty texts for what was not. */
    public record Typed(DriveWay way, String rate, String use, String price) {
        static Typed of(DriveWay way) {
            return new Typed(way, "", "", "");
        }
    }

    /** "mi". */
    public String distanceUnit() {
        return isUs() ? "mi" : "km";
    }

    /** "gal". */
    public String fuelUnit() {
        return isUs() ? "gal" : "L";
    }

    /** "186", to a thousandth of a mile or kilometre. */
    public String number(Length distance) {
        return plain(Units.in(distance, distanceUnit(), DECIMALS));
    }

    public TripCost.Drive sum(Money cost) {
        return new TripCost.Flat(cost);
    }

    /**
     * @param distance there and back
     * @param rate for one mile or kilometre
     */
    public TripCost.ByRate byRate(Length distance, BigDecimal rate) {
        return new TripCost.ByRate(distance, rate, currency, distance("1"));
    }

    /**
     * @param distance there and back
     * @param use miles on a gallon, or litres for 100 km; above zero
     * @param price of a gallon or a litre
     */
    public TripCost.ByFuel byFuel(Length distance, BigDecimal use, BigDecimal price) {
        return isUs()
                ? new TripCost.ByFuel(distance, BigDecimal.ONE, distance(use.toPlainString()), price, currency)
                : new TripCost.ByFuel(distance, use, distance("100"), price, currency);
    }

    /** "186 mi at 0.725 USD a mi", "186 mi, 15 mi on a gal, 4.199 USD a gal"; empty where nothing more is to be said. */
    public String of(TripCost.Drive drive) {
        return switch (drive) {
            case TripCost.Flat sum -> "";
            case TripCost.OnReceipts elsewhere -> "";
            case TripCost.ByRate rate ->
                "%s at %s %s a %s".formatted(miles(rate.distance()), plain(rate.rate()), currency, distanceUnit());
            case TripCost.ByFuel fuel ->
                "%s, %s, %s %s a %s"
                        .formatted(miles(fuel.distance()), use(fuel), plain(fuel.price()), currency, fuelUnit());
        };
    }

    private String use(TripCost.ByFuel fuel) {
        return isUs() ? miles(fuel.per()) + " on a gal" : plain(fuel.used()) + " L for 100 km";
    }

    /** What {@link #of} said of a drive; one sum when the text says nothing of that kind in these units. */
    Typed read(String text) {
        Matcher rate = Pattern.compile(NUMBER + " " + currency + " a " + distanceUnit() + "$")
                .matcher(text);
        if (rate.find()) {
            return new Typed(DriveWay.RATE, rate.group(1), "", "");
        }
        String use = isUs() ? NUMBER + " mi on a gal" : NUMBER + " L for 100 km";
        Matcher fuel = Pattern.compile(use + ", " + NUMBER + " " + currency + " a " + fuelUnit() + "$")
                .matcher(text);
        return fuel.find() ? new Typed(DriveWay.FUEL, "", fuel.group(1), fuel.group(2)) : Typed.of(DriveWay.SUM);
    }

    private boolean isUs() {
        return units == UnitSystem.US;
    }

    private String miles(Length distance) {
        return number(distance) + " " + distanceUnit();
    }

    private Length distance(String number) {
        return (Length) Units.parse(Dimension.LENGTH, number + " " + distanceUnit());
    }

    private static String plain(BigDecimal number) {
        return Measured.normal(number).toPlainString();
    }
}
