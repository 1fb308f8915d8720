package org.firmset.trade.trace;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import org.firmset.measure.Area;
import org.firmset.measure.Density;
import org.firmset.measure.Dimension;
import org.firmset.measure.Energy;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.Volume;

/** Amounts as text, to about four digits: enough to follow a calculation, no more than it can promise. */
public final class Show {
    /** Not a unit but a way of writing: 9 ft 4 3/4 in. */
    static final String FEET_AND_INCHES = "ft in";

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final int DIGITS = 4;
    private static final int PARTS_OF_INCH = 16;

    private Show() {}

    public static String amount(Amount amount, UnitSystem units) {
        return switch (amount) {
            case Amount.Quantity quantity -> quantity(quantity, units);
            case Amount.Count count -> counted(count.number(), count.noun());
            case Amount.Packs packs -> packs(packs);
            case Amount.Number number -> number(number);
            case Amount.Both both -> number(units == UnitSystem.US ? both.us() : both.metric());
            case Amount.On on -> DATE.format(on.date());
            case Amount.Word word -> word.text();
        };
    }

    /** A quantity as a person enters it, to about four digits. */
    public static String measured(Measured quantity, UnitSystem units) {
        return amount(
                switch (quantity) {
                    case Mass mass -> Amount.mass(mass.amount());
                    case Volume volume -> Amount.volume(volume.amount());
                    case Length length ->
                        length.amount() < 0.1
                                ? Amount.thin(length.amount())
                                : length.amount() < 100 ? Amount.length(length) : Amount.head(length.amount());
                    case Area area -> Amount.area(area.amount());
                    case Energy energy -> Amount.energy(energy.amount());
                    case Power power -> Amount.power(power.amount());
                    case Temperature temperature -> Amount.temperature(temperature.amount());
                    case Pressure pressure -> Amount.pressure(pressure.amount());
                    case Flow flow -> Amount.flow(flow.amount());
                    case Speed speed -> Amount.speed(speed.amount());
                    case Density density -> Amount.density(density.amount());
                },
                units);
    }

    /** What the symbols of a line's formula mean and are: "n: cells filled, 78; v: cores, 8.48 L". */
    public static String terms(Line line, UnitSystem units) {
        return line.terms().stream()
                .map(t -> t.symbol() + ": " + t.words() + ", " + amount(t.amount(), units))
                .collect(Collectors.joining("; "));
    }

    private static String counted(long number, String noun) {
        String shown = String.format(Locale.ROOT, "%,d", number);
        return noun.isEmpty() ? shown : shown + " " + (number == 1 ? one(noun) : noun);
    }

    /** "bag" of "bags", "box" of "boxes". */
    private static String one(String nouns) {
        boolean hissing = nouns.endsWith("xes") || nouns.endsWith("ches") || nouns.endsWith("shes");
        return hissing ? nouns.substring(0, nouns.length() - 2) : nouns.replaceFirst("(?<!s)s$", "");
    }

    private static String packs(Amount.Packs packs) {
        boolean even = Math.abs(packs.whole() - packs.exact()) < 0.005;
        String shown = counted(packs.whole(), packs.noun());
        return even ? shown : shown + " (" + plain(round(BigDecimal.valueOf(packs.exact()))) + ")";
    }

    private static String number(Amount.Number number) {
        String shown = String.format(Locale.ROOT, "%,." + number.decimals() + "f", number.value());
        String trimmed = shown.contains(".") ? shown.replaceAll("0+$", "").replaceAll("\\.$", "") : shown;
        String signed = trimmed.equals("-0") ? "0" : trimmed;
        return number.unit().isEmpty() ? signed : signed + " " + number.unit();
    }

    private static String quantity(Amount.Quantity quantity, UnitSystem units) {
        String symbol = units == UnitSystem.US ? quantity.us() : quantity.metric();
        if (symbol.equals(FEET_AND_INCHES)) {
            return feetAndInches(quantity.measured());
        }
        if (quantity.measured().dimension() == Dimension.TEMPERATURE) {
            return plain(Units.in(quantity.measured(), symbol, 1)) + " " + symbol.replace("deg", "°");
        }
        return plain(round(Units.in(quantity.measured(), symbol, 9))) + " " + symbol;
    }

    /** To four digits; digits before the decimal point are never rounded away. */
    private static BigDecimal round(BigDecimal value) {
        int before = value.precision() - value.scale();
        return value.round(new MathContext(Math.max(DIGITS, before), RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        int decimals = Math.max(0, stripped.scale());
        return String.format(Locale.ROOT, "%,." + decimals + "f", stripped);
    }

    /** To the nearest sixteenth of an inch, as tapes are marked. */
    private static String feetAndInches(Measured length) {
        long parts = Units.in(length, "in", 9)
                .multiply(BigDecimal.valueOf(PARTS_OF_INCH))
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact();
        String sign = parts < 0 ? "-" : "";
        long size = Math.abs(parts);
        long feet = size / (12 * PARTS_OF_INCH);
        long inches = size / PARTS_OF_INCH % 12;
        String fraction = fraction(size % PARTS_OF_INCH);
        StringBuilder text = new StringBuilder(sign);
        if (feet > 0) {
            text.append(String.format(Locale.ROOT, "%,d ft", feet));
        }
        boolean noInches = inches == 0 && fraction.isEmpty();
        if (feet > 0 && noInches) {
            return text.toString();
        }
        if (feet > 0) {
            text.append(' ');
        }
        boolean onlyFraction = inches == 0 && !fraction.isEmpty();
        text.append(onlyFraction ? fraction : fraction.isEmpty() ? inches : inches + " " + fraction);
        return text.append(" in").toString();
    }

    private static String fraction(long sixteenths) {
        if (sixteenths == 0) {
            return "";
        }
        long top = sixteenths;
        long bottom = PARTS_OF_INCH;
        while (top % 2 == 0) {
            top /= 2;
            bottom /= 2;
        }
        return top + "/" + bottom;
    }
}
