package org.firmset.homestead.part;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.firmset.measure.Cash;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Measured;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.Worded;
import org.firmset.trade.trace.Show;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * One component of a homestead record: what it is called, what it takes, and how a person writes it.
 *
 * @param type the type of the component, or of its elements when it is a list
 */
public record Part(
        String name, Class<?> type, boolean list, boolean optional, Described described, RecordComponent component) {

    private static final ClassValue<List<Part>> PARTS = new ClassValue<>() {
        @Override
        protected List<Part> computeValue(Class<?> recordType) {
            return Arrays.stream(recordType.getRecordComponents()).map(Part::of).toList();
        }
    };

    public static List<Part> of(Class<?> recordType) {
        return PARTS.get(recordType);
    }

    private static Part of(RecordComponent component) {
        Described described = Objects.requireNonNull(
                component.getAnnotation(Described.class),
                () -> "component [" + component.getName() + "] of [" + component.getDeclaringRecord()
                        + "] must be @Described");
        boolean list = component.getType() == List.class;
        Class<?> type = list
                ? (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                : component.getType();
        boolean optional = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return new Part(component.getName(), type, list, optional, described, component);
    }

    /** The record of a type that has these values for its components. */
    public static <R> R record(Class<R> type, List<@Nullable Object> values) {
        try {
            return type.cast(type.getDeclaredConstructors()[0].newInstance(values.toArray()));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("record [" + type + "] could not be made", e);
        }
    }

    public @Nullable Object valueIn(Record owner) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(
                    "component [" + name + "] of [" + owner.getClass() + "] is not readable", e);
        }
    }

    /** Whether its values have parts of their own. */
    public boolean nested() {
        return type.isRecord() && !Scalars.isScalar(type);
    }

    /** Whether it is one described record, and not a list of them. */
    public boolean isGroup() {
        return !list && type.isRecord() && type.isAnnotationPresent(Described.class);
    }

    /** What a record's key belongs to, in words: "open rule". */
    public static String kindOf(Class<?> recordType) {
        return Words.kindOf(recordType);
    }

    /** Its name as a label: "Gross rating". */
    public String label() {
        String spaced = name.replaceAll("(?<=[a-z])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", " ")
                .toLowerCase(Locale.ROOT);
        return spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
    }

    /** What its enum constants are called in words. */
    public static String word(Enum<?> constant) {
        if (constant instanceof Worded worded) {
            return worded.words();
        }
        return Words.ofEnum(constant).replace('-', ' ');
    }

    /**
     * A value as a person entered it.
     *
     * @throws ScalarFault when it cannot be accepted
     */
    public Object entered(String text) {
        String stripped = text.strip();
        if (type == boolean.class) {
            return truth(stripped);
        }
        boolean number = type == int.class || type == Integer.class || type == BigDecimal.class;
        if (number && name.endsWith("Percent") && stripped.endsWith("%")) {
            return entered(stripped.substring(0, stripped.length() - 1));
        }
        @Nullable Dimension dimension = Scalars.DIMENSIONS.get(type);
        if (stripped.equals("0") && dimension != null && dimension != Dimension.TEMPERATURE) {
            // nothing is nothing in every unit
            return dimension.of(BigDecimal.ZERO);
        }
        return Scalars.read(
                number
                        ? JsonNodeFactory.instance.numberNode(numberIn(stripped))
                        : JsonNodeFactory.instance.stringNode(stripped),
                this);
    }

    private static boolean truth(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "true", "yes" -> true;
            case "false", "no" -> false;
            default -> throw new ScalarFault("is neither yes nor no", "Write yes or no");
        };
    }

    /** The value that is meant when nothing is written; null when there is none. */
    public @Nullable Object usual() {
        return described.usual().isEmpty() ? null : entered(described.usual());
    }

    private BigDecimal numberIn(String text) {
        if (!text.matches("[+-]?\\d{1,12}(\\.\\d{1,9})?")) {
            throw new ScalarFault("is not a number", "Write a number such as 12");
        }
        return new BigDecimal(text);
    }

    /** The allowed range in a person's units: "From 1 9/16 in to 3 ft 3 3/8 in."; empty when there are not two ends. */
    public String range(UnitSystem units) {
        if (described.least().isEmpty() || described.most().isEmpty()) {
            return "";
        }
        return "From " + limit(described.least(), units) + " to " + limit(described.most(), units) + ".";
    }

    private String limit(String text, UnitSystem units) {
        @Nullable Dimension dimension = Scalars.DIMENSIONS.get(type);
        return dimension == null ? text : Show.measured(Units.parse(dimension, text), units);
    }

    /** The text that {@link #entered} reads back, in the units of a person. */
    public static String editable(Object value, UnitSystem units) {
        return switch (value) {
            case Measured measured -> Units.editable(measured, units);
            case Money money -> Cash.text(money);
            case BigDecimal number -> number.toPlainString();
            case Enum<?> constant -> Words.ofEnum(constant);
            default -> value.toString();
        };
    }

    /** A value in a few words, to find it by in a list. */
    public static String shown(Object value, UnitSystem units) {
        return switch (value) {
            case Measured measured -> Units.show(measured, units);
            case Money money -> Cash.show(Cash.cents(money), money.getCurrency().getCurrencyCode());
            case Enum<?> constant -> word(constant);
            case Boolean truth -> truth ? "yes" : "no";
            case List<?> list -> list.stream().map(v -> shown(v, units)).collect(Collectors.joining(", "));
            default -> value.toString();
        };
    }
}
