package org.firmset.trade.takeoff;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Hours;
import org.firmset.measure.Measured;
import org.firmset.measure.Units;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Inputs as they are when nothing is written, but for what a test names; groups are filled from the same flat names. */
public final class Inputs {
    private static final Map<Class<?>, Function<String, Object>> READERS = Map.of(
            int.class, Integer::valueOf,
            boolean.class, Boolean::valueOf,
            BigDecimal.class, BigDecimal::new,
            String.class, text -> text,
            LocalTime.class, LocalTime::parse,
            Hours.class, Hours::parse,
            PlanShape.class, PlanShape::parse,
            Pieces.class, Pieces::parse);

    private final Map<String, String> open;

    private Inputs(String... namesAndTexts) {
        open = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            open.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
    }

    /** @param namesAndTexts name, text, name, text: names of components and what is written there */
    public static <I extends Record> I of(Class<I> type, String... namesAndTexts) {
        Inputs inputs = new Inputs(namesAndTexts);
        I made = inputs.make(type);
        if (!inputs.open.isEmpty()) {
            throw new IllegalArgumentException("names " + inputs.open.keySet() + " must be components of " + type);
        }
        return made;
    }

    /** Works out the calculator that takes these inputs, limits checked. */
    public static Worksheet work(Class<? extends Record> type, String... namesAndTexts) {
        return kind(type).work(of(type, namesAndTexts));
    }

    /** The refusal of these inputs, limits checked. */
    static Refusal refused(Class<? extends Record> type, String... namesAndTexts) {
        return assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> work(type, namesAndTexts))
                .actual();
    }

    static Kind<?> kind(Class<? extends Record> type) {
        return TakeoffKinds.ALL.stream()
                .filter(k -> k.inputs() == type)
                .findFirst()
                .orElseThrow();
    }

    private <I extends Record> I make(Class<I> type) {
        RecordComponent[] components = type.getRecordComponents();
        @Nullable Object[] values = Arrays.stream(components).map(this::value).toArray();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("values " + Arrays.toString(values) + " of " + type, e);
        }
    }

    private @Nullable Object value(RecordComponent component) {
        Class<?> type = component.getType();
        if (type.isRecord() && type.isAnnotationPresent(Described.class)) {
            return make(type.asSubclass(Record.class));
        }
        Described described = Objects.requireNonNull(component.getAnnotation(Described.class));
        String text = open.containsKey(component.getName())
                ? Objects.requireNonNull(open.remove(component.getName()))
                : described.usual();
        return text.isEmpty() ? null : read(type, text);
    }

    private static Object read(Class<?> type, String text) {
        Function<String, Object> reader = READERS.get(type);
        if (reader != null) {
            return reader.apply(text);
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(c -> word(c).equals(text))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("text [" + text + "] must be a word of " + type));
        }
        return measured(type, text);
    }

    private static String word(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Measured measured(Class<?> type, String text) {
        for (Dimension dimension : Dimension.values()) {
            if (type.isInstance(dimension.of(BigDecimal.ONE))) {
                return Units.parse(dimension, text);
            }
        }
        throw new IllegalArgumentException("type [" + type + "] must have a reader");
    }
}
