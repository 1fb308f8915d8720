package org.firmset.homestead.part;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firmset.measure.Area;
import org.firmset.measure.Cash;
import org.firmset.measure.Density;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Energy;
import org.firmset.measure.Flow;
import org.firmset.measure.Hours;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;
import org.firmset.measure.Volume;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.climate.Readings;
import org.firmset.trade.takeoff.Pieces;
import org.firmset.trade.takeoff.PlanShape;
import org.firmset.trade.water.Outlets;
import org.javamoney.moneta.Money;
import tools.jackson.databind.JsonNode;

/** The single values of a homestead file: how each type is read, limited and written. */
public final class Scalars {
    public static final Map<Class<?>, Dimension> DIMENSIONS = Map.ofEntries(
            Map.entry(Mass.class, Dimension.MASS),
            Map.entry(Volume.class, Dimension.VOLUME),
            Map.entry(Length.class, Dimension.LENGTH),
            Map.entry(Area.class, Dimension.AREA),
            Map.entry(Energy.class, Dimension.ENERGY),
            Map.entry(Power.class, Dimension.POWER),
            Map.entry(Temperature.class, Dimension.TEMPERATURE),
            Map.entry(Pressure.class, Dimension.PRESSURE),
            Map.entry(Flow.class, Dimension.FLOW),
            Map.entry(Speed.class, Dimension.SPEED),
            Map.entry(Density.class, Dimension.DENSITY));
    /** Values that are one text of their own making. */
    private static final Map<Class<?>, Function<String, Object>> TEXTS = Map.of(
            Pieces.class, Pieces::parse,
            PlanShape.class, PlanShape::parse,
            MonthlyTemperatures.class, MonthlyTemperatures::parse,
            Readings.class, Readings::parse,
            Outlets.class, Outlets::parse);

    public static final Pattern KEY = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");
    public static final int LONGEST_TEXT = 2000;
    private static final Set<Class<?>> WHOLE_NUMBERS = Set.of(int.class, Integer.class);
    /** Enough in any currency, and little enough that sums of prices stay exact. */
    private static final BigDecimal MOST_MONEY = new BigDecimal("10000000000");

    public static final LocalDate FIRST_DATE = LocalDate.of(1990, 1, 1);
    public static final LocalDate LAST_DATE = LocalDate.of(2199, 12, 31);

    private Scalars() {}

    /** Whether a record is one value, not a group of them. */
    public static boolean isScalar(Class<?> type) {
        return DIMENSIONS.containsKey(type) || type == Hours.class || TEXTS.containsKey(type);
    }

    /** @throws ScalarFault when the value cannot be accepted */
    public static Object read(JsonNode node, Part part) {
        Class<?> type = part.type();
        Described described = part.described();
        if (WHOLE_NUMBERS.contains(type)) {
            return wholeNumber(node, described);
        }
        if (type == BigDecimal.class) {
            return number(node, described);
        }
        if (type == boolean.class) {
            require(node.isBoolean(), "is neither true nor false", "Write true or false without quotes");
            return node.booleanValue();
        }
        require(node.isString(), "is not a text", "Write it in quotes");
        return ofText(node.stringValue(), type, described);
    }

    private static int wholeNumber(JsonNode node, Described described) {
        require(isWhole(node), "is not a whole number", "Write a whole number");
        limit(BigDecimal.valueOf(node.intValue()), described);
        return node.intValue();
    }

    private static boolean isWhole(JsonNode node) {
        return node.isNumber() && node.decimalValue().stripTrailingZeros().scale() <= 0 && node.canConvertToInt();
    }

    private static BigDecimal number(JsonNode node, Described described) {
        require(node.isNumber(), "is not a number", "Write a number without quotes");
        BigDecimal value = node.decimalValue();
        require(
                value.precision() - value.scale() <= 15 && value.scale() <= 30,
                "is out of all proportion",
                "Write a smaller number");
        limit(value, described);
        return Measured.normal(value);
    }

    private static void limit(BigDecimal value, Described described) {
        require(
                described.least().isEmpty() || value.compareTo(new BigDecimal(described.least())) >= 0,
                "is too small",
                "The least is " + described.least());
        require(
                described.most().isEmpty() || value.compareTo(new BigDecimal(described.most())) <= 0,
                "is too large",
                "The most is " + described.most());
    }

    private static Object ofText(String text, Class<?> type, Described described) {
        if (type == String.class) {
            return text(text, described);
        }
        if (type.isEnum()) {
            return Words.constant(type, text)
                    .orElseThrow(() -> new ScalarFault(
                            "is not one of the words understood here",
                            "Write one of " + Words.allOf(type).collect(Collectors.joining(", "))));
        }
        try {
            return ofWrittenType(text, type, described);
        } catch (DateTimeException e) {
            throw new ScalarFault(
                    "is not a " + (type == LocalTime.class ? "time" : "date"),
                    "Write it as '"
                            + (type == LocalDate.class ? "2027-05-01" : type == MonthDay.class ? "--05-01" : "07:30")
                            + "'");
        } catch (UnitsFault e) {
            throw fault(String.valueOf(e.getMessage()));
        }
    }

    private static Object ofWrittenType(String text, Class<?> type, Described described) {
        if (TEXTS.containsKey(type)) {
            return Objects.requireNonNull(TEXTS.get(type)).apply(text);
        }
        if (type == LocalDate.class) {
            return date(text);
        }
        if (type == LocalTime.class) {
            return LocalTime.parse(text);
        }
        return type == MonthDay.class ? MonthDay.parse(text) : amount(text, type, described);
    }

    /** Says apart what a message says in one: "'12' is not a number with its unit; write a length such as '12 ft'". */
    private static ScalarFault fault(String message) {
        int quoted = message.indexOf("' ");
        int split = message.lastIndexOf("; write");
        boolean usual = quoted >= 0 && split > quoted;
        return usual
                ? new ScalarFault(message.substring(quoted + 2, split), "W" + message.substring(split + 3))
                : new ScalarFault("cannot be read: " + message, "Write it in another way");
    }

    private static String text(String text, Described described) {
        if (described.key() || !described.names().isEmpty()) {
            require(
                    KEY.matcher(text).matches(),
                    "is not a key",
                    "Use lower-case letters, digits and hyphens, at most 60");
            return text;
        }
        require(!text.isBlank(), "is empty", "Write at least one letter");
        require(text.length() <= LONGEST_TEXT, "is too long", "Use at most " + LONGEST_TEXT + " characters");
        require(
                text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t'),
                "holds control characters",
                "Take them out");
        require(UTF_8.newEncoder().canEncode(text), "holds half a character", "Write it again");
        return text;
    }

    private static LocalDate date(String text) {
        LocalDate date = LocalDate.parse(text);
        require(
                !date.isBefore(FIRST_DATE) && !date.isAfter(LAST_DATE),
                "is too far away",
                "Use a date from " + FIRST_DATE + " to " + LAST_DATE);
        return date;
    }

    private static Object amount(String text, Class<?> type, Described described) {
        if (type == Hours.class) {
            Hours hours = Hours.parse(text);
            require(
                    described.least().isEmpty()
                            || hours.quarters()
                                    >= Hours.parse(described.least()).quarters(),
                    "is too little",
                    "The least is " + described.least());
            require(
                    described.most().isEmpty()
                            || hours.quarters() <= Hours.parse(described.most()).quarters(),
                    "is too much",
                    "The most is " + described.most());
            return hours;
        }
        if (type == Money.class) {
            Money money = Cash.parse(text);
            require(
                    Cash.amountOf(money).compareTo(leastMoney(described)) >= 0,
                    "is negative",
                    "Write an amount of 0 or more");
            require(
                    Cash.amountOf(money).compareTo(MOST_MONEY) <= 0,
                    "is too much",
                    "The most is " + MOST_MONEY.toPlainString());
            return money;
        }
        return measured(text, Objects.requireNonNull(DIMENSIONS.get(type)), described);
    }

    /** Nothing is paid back in what people write; a kept budget also holds what went back. */
    private static BigDecimal leastMoney(Described described) {
        return described.least().isEmpty() ? BigDecimal.ZERO : new BigDecimal(described.least());
    }

    private static Measured measured(String text, Dimension dimension, Described described) {
        Measured measured = Units.parse(dimension, text);
        require(
                described.least().isEmpty()
                        || measured.value()
                                        .compareTo(Units.parse(dimension, described.least())
                                                .value())
                                >= 0,
                "is too small",
                "The least is " + described.least());
        require(
                described.most().isEmpty()
                        || measured.value()
                                        .compareTo(Units.parse(dimension, described.most())
                                                .value())
                                <= 0,
                "is too large",
                "The most is " + described.most());
        return measured;
    }

    /** The text that {@link #read} reads back. */
    public static String write(Object value, UnitSystem units) {
        return switch (value) {
            case Measured measured -> Units.editable(measured, units);
            case Money money -> Cash.text(money);
            case Enum<?> constant -> Words.ofEnum(constant);
            default -> value.toString();
        };
    }

    private static void require(boolean holds, String problem, String remedy) {
        if (!holds) {
            throw new ScalarFault(problem, remedy);
        }
    }
}
