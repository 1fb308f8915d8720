package org.firmset.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.function.RationalNumber;

/** Reads quantities as people write them and shows them in the units they use. Thread-safe. */
public final class Units {
    private static final String NUMBER = "[+-]?\\d{1,15}(?:\\.\\d{1,12})?";
    private static final String FRACTION = "\\d{1,3}/\\d{1,3}";
    private static final String UNIT = "[\\p{L}°'\"]{1,5}[23²³]?(?:/\\p{L}{1,3}[23²³]?)?";
    private static final Pattern TERM = Pattern.compile(
            "\\s*(?:(" + NUMBER + ")(?:\\s+(" + FRACTION + "))?|(" + FRACTION + "))\\s*(" + UNIT + ")\\s*");
    private static final int LONGEST_TEXT = 60;
    private static final int FEW_DECIMALS = 3;
    private static final int MOST_DECIMALS = 6;
    /** In metres; from here on people count in kilometres or miles. */
    private static final BigDecimal LONG_WAY = BigDecimal.valueOf(1_000);

    /** In cubic metres; cans and bags below it are counted in litres. */
    private static final BigDecimal SMALL_VOLUME = new BigDecimal("0.1");

    private static final Map<String, String> OTHER_SPELLINGS = Map.ofEntries(
            Map.entry("°C", "degC"),
            Map.entry("C", "degC"),
            Map.entry("°F", "degF"),
            Map.entry("F", "degF"),
            Map.entry("m³", "m3"),
            Map.entry("ft³", "ft3"),
            Map.entry("yd³", "yd3"),
            Map.entry("in³", "in3"),
            Map.entry("m²", "m2"),
            Map.entry("ft²", "ft2"),
            Map.entry("in²", "in2"),
            Map.entry("yd²", "yd2"),
            Map.entry("psf", "lb/ft2"),
            Map.entry("pcf", "lb/ft3"),
            Map.entry("lb/ft²", "lb/ft2"),
            Map.entry("lb/ft³", "lb/ft3"),
            Map.entry("kg/m³", "kg/m3"),
            Map.entry("l/min", "L/min"),
            Map.entry("l/s", "L/s"),
            Map.entry("l", "L"),
            Map.entry("ml", "mL"),
            Map.entry("lbs", "lb"),
            Map.entry("'", "ft"),
            Map.entry("\"", "in"),
            Map.entry("wh", "Wh"),
            Map.entry("kwh", "kWh"));

    private Units() {}

    /**
     * Reads a quantity such as "80 lb", "3.8 m", "7 5/8 in" or "12 ft 6 in" (terms of one dimension are added).
     *
     * @throws UnitsFault when the text is no quantity of this dimension; the message says why and what is understood
     */
    public static Measured parse(Dimension dimension, String text) {
        if (text.length() > LONGEST_TEXT) {
            throw fault(dimension, text.substring(0, LONGEST_TEXT) + "...", "is too long");
        }
        Matcher matcher = TERM.matcher(text);
        BigDecimal sum = BigDecimal.ZERO;
        int end = 0;
        int terms = 0;
        while (matcher.find() && matcher.start() == end) {
            sum = sum.add(stored(dimension, text, number(dimension, text, matcher), matcher.group(4)));
            end = matcher.end();
            terms++;
        }
        if (terms == 0 || end != text.length()) {
            throw fault(dimension, text, "is not a number with its unit");
        }
        if (terms > 1 && dimension == Dimension.TEMPERATURE) {
            throw fault(dimension, text, "has more than one temperature in it");
        }
        return dimension.of(sum);
    }

    private static BigDecimal number(Dimension dimension, String text, Matcher matcher) {
        BigDecimal whole = matcher.group(1) == null ? BigDecimal.ZERO : new BigDecimal(matcher.group(1));
        String written = matcher.group(1) == null ? matcher.group(3) : matcher.group(2);
        if (written == null) {
            return whole;
        }
        int slash = written.indexOf('/');
        BigDecimal parts = new BigDecimal(written.substring(slash + 1));
        if (parts.signum() == 0) {
            throw fault(dimension, text, "divides by nothing");
        }
        BigDecimal fraction = new BigDecimal(written.substring(0, slash))
                .divide(parts, Measured.DECIMALS + 6, RoundingMode.HALF_EVEN);
        return matcher.group(1) != null && matcher.group(1).startsWith("-")
                ? whole.subtract(fraction)
                : whole.add(fraction);
    }

    private static BigDecimal stored(Dimension dimension, String text, BigDecimal number, String written) {
        String symbol = OTHER_SPELLINGS.getOrDefault(written, written);
        Unit<?> unit = dimension.units().get(symbol);
        if (unit == null) {
            throw fault(dimension, text, "has the unit '" + written + "', which is no unit of " + dimension.word());
        }
        return convert(number, unit, dimension.storedUnit());
    }

    private static UnitsFault fault(Dimension dimension, String text, String problem) {
        return new UnitsFault("'%s' %s; write %s such as '%s', with one of the units %s"
                .formatted(
                        text,
                        problem,
                        withArticle(dimension),
                        example(dimension),
                        String.join(", ", dimension.units().keySet())));
    }

    private static String withArticle(Dimension dimension) {
        boolean vowel = "aeiou".indexOf(dimension.word().charAt(0)) >= 0;
        return (vowel ? "an " : "a ") + dimension.word();
    }

    private static String example(Dimension dimension) {
        return switch (dimension) {
            case MASS -> "80 lb";
            case VOLUME -> "0.6 ft3";
            case LENGTH -> "12 ft 6 in";
            case ENERGY -> "2.4 kWh";
            case POWER -> "900 W";
            case TEMPERATURE -> "4.5 degC";
            case AREA -> "120 ft2";
            case PRESSURE -> "50 psi";
            case FLOW -> "5 gpm";
            case SPEED -> "8 mph";
            case DENSITY -> "140 lb/ft3";
        };
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static BigDecimal convert(BigDecimal value, Unit from, Unit to) {
        if (from.equals(to)) {
            return value;
        }
        UnitConverter converter = from.getConverterTo(to);
        return Measured.normal(exact(converter.convert(value)));
    }

    private static BigDecimal exact(Number number) {
        if (number instanceof RationalNumber rational) {
            return new BigDecimal(rational.getDividend())
                    .divide(new BigDecimal(rational.getDivisor()), Measured.DECIMALS + 3, RoundingMode.HALF_EVEN);
        }
        return new BigDecimal(number.toString());
    }

    /** The value of a quantity in a unit of its dimension, rounded half even to the given decimals. */
    public static BigDecimal in(Measured quantity, String symbol, int decimals) {
        Unit<?> unit = quantity.dimension().units().get(symbol);
        if (unit == null) {
            throw new IllegalArgumentException("symbol [" + symbol + "] is no unit of "
                    + quantity.dimension().word() + "; known are "
                    + quantity.dimension().units().keySet());
        }
        return convert(quantity.value(), quantity.dimension().storedUnit(), unit)
                .setScale(decimals, RoundingMode.HALF_EVEN);
    }

    /** The quantity as a person of this unit system reads it: "36 kg", "80 lb", "0.6 ft3". */
    public static String show(Measured quantity, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        return switch (quantity) {
            case Mass mass -> shown(mass, us ? "lb" : "kg", 0);
            case Volume volume -> us ? shown(volume, "ft3", 1) : litresOrCubicMetres(volume);
            case Length length -> shownLength(length, us);
            case Energy energy ->
                energy.value().abs().compareTo(BigDecimal.valueOf(1000)) < 0
                        ? shown(energy, "Wh", 0)
                        : shown(energy, "kWh", 1);
            case Power power -> shown(power, "W", 0);
            case Temperature temperature ->
                in(temperature, us ? "degF" : "degC", 0).toPlainString() + (us ? " °F" : " °C");
            case Area area -> shown(area, us ? "ft2" : "m2", 1);
            case Pressure pressure -> shown(pressure, us ? "psi" : "kPa", 1);
            case Flow flow -> shown(flow, us ? "gpm" : "L/min", 1);
            case Speed speed -> shown(speed, us ? "mph" : "km/h", 0);
            case Density density -> shown(density, us ? "lb/ft3" : "kg/m3", 0);
        };
    }

    private static String litresOrCubicMetres(Volume volume) {
        return volume.value().compareTo(BigDecimal.ONE) < 0 ? shown(volume, "L", 0) : shown(volume, "m3", 2);
    }

    private static String shownLength(Length length, boolean us) {
        boolean far = length.value().compareTo(BigDecimal.valueOf(500)) >= 0;
        if (far) {
            return shown(length, us ? "mi" : "km", 0);
        }
        return us ? shown(length, "ft", 1) : shown(length, "m", 2);
    }

    private static String shown(Measured quantity, String symbol, int decimals) {
        BigDecimal value = in(quantity, symbol, decimals);
        return String.format(Locale.ROOT, "%,." + decimals + "f %s", value, symbol);
    }

    /** The text that {@link #parse} reads back to the same quantity, in the unit people of this system write. */
    public static String editable(Measured quantity, UnitSystem system) {
        List<String> symbols = written(quantity, system == UnitSystem.US);
        return symbols.stream()
                .flatMap(symbol -> exact(quantity, symbol, FEW_DECIMALS).stream())
                .findFirst()
                .or(() -> exact(quantity, symbols.getFirst(), MOST_DECIMALS))
                // no short form gives exactly this value back: the stored unit always does
                .orElseGet(() -> quantity.value().toPlainString() + " "
                        + quantity.dimension().storedSymbol());
    }

    /** Units people write such a quantity in, the likeliest first: thicknesses in inches, walls in feet, drives in miles. */
    private static List<String> written(Measured quantity, boolean us) {
        return switch (quantity.dimension()) {
            case MASS -> List.of(us ? "lb" : "kg");
            case VOLUME -> {
                boolean small = quantity.value().compareTo(SMALL_VOLUME) < 0;
                List<String> metric = small ? List.of("L", "m3") : List.of("m3", "L");
                yield us
                        ? Stream.concat(Stream.of("ft3", "gal"), metric.stream())
                                .toList()
                        : metric;
            }
            case LENGTH -> {
                if (quantity.value().compareTo(LONG_WAY) >= 0) {
                    yield us ? List.of("mi", "ft") : List.of("km", "m");
                }
                boolean small = us && in(quantity, "ft", FEW_DECIMALS).compareTo(BigDecimal.ONE) < 0;
                yield us ? (small ? List.of("in", "ft") : List.of("ft", "in")) : List.of("m");
            }
            case ENERGY -> List.of("Wh");
            case POWER -> List.of("W");
            case TEMPERATURE -> List.of(us ? "degF" : "degC");
            case AREA -> List.of(us ? "ft2" : "m2");
            case PRESSURE -> List.of(us ? "psi" : "kPa");
            case FLOW -> List.of(us ? "gpm" : "L/min");
            case SPEED -> List.of(us ? "mph" : "km/h");
            case DENSITY -> List.of(us ? "lb/ft3" : "kg/m3");
        };
    }

    /** The shortest text in this unit that is read back as the very same; empty when none of so many decimals is. */
    private static Optional<String> exact(Measured quantity, String symbol, int most) {
        String written = symbol.replace("deg", "°");
        return IntStream.rangeClosed(0, most)
                .mapToObj(decimals -> in(quantity, symbol, decimals).toPlainString() + " " + written)
                .filter(text -> parse(quantity.dimension(), text).equals(quantity))
                .findFirst();
    }
}
