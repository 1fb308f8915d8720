package org.firmset.trade.trace;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Measured;
import org.firmset.measure.Units;
import org.jspecify.annotations.Nullable;

/** Holds the inputs of a calculation against the limits their descriptions state, whoever made them. */
final class Limits {
    private record Limit(RecordComponent component, String least, String most) {
        /** Whether it is a group of inputs with limits of their own. */
        boolean isGroup() {
            return component.getType().isRecord() && component.getType().isAnnotationPresent(Described.class);
        }
    }

    private static final ClassValue<List<Limit>> LIMITS = new ClassValue<>() {
        @Override
        protected List<Limit> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(Limits::limit)
                    .flatMap(Optional::stream)
                    .toList();
        }
    };

    private static final Map<String, BigDecimal> QUANTITIES = new ConcurrentHashMap<>();

    private Limits() {}

    private static Optional<Limit> limit(RecordComponent component) {
        Described described = Objects.requireNonNull(
                component.getAnnotation(Described.class), () -> "component [" + component + "] must be @Described");
        Limit limit = new Limit(component, described.least(), described.most());
        boolean bounded = !limit.least().isEmpty() || !limit.most().isEmpty() || limit.isGroup();
        return bounded ? Optional.of(limit) : Optional.empty();
    }

    /** @throws Refusal for the first input beyond its limits */
    static void check(Record inputs) {
        for (Limit limit : LIMITS.get(inputs.getClass())) {
            @Nullable Object value = value(limit.component(), inputs);
            if (limit.isGroup() && value instanceof Record group) {
                check(group);
                continue;
            }
            if (value instanceof Measured measured) {
                Dimension dimension = measured.dimension();
                check(limit, value, measured.value(), text -> quantity(dimension, text));
            } else if (value instanceof Number number) {
                check(limit, value, new BigDecimal(number.toString()), BigDecimal::new);
            }
        }
    }

    /** Limits are few and asked for again and again; reading a quantity is slow. */
    private static BigDecimal quantity(Dimension dimension, String text) {
        return QUANTITIES.computeIfAbsent(
                dimension + " " + text, key -> Units.parse(dimension, text).value());
    }

    private interface Reader {
        BigDecimal read(String text);
    }

    private static void check(Limit limit, Object shown, BigDecimal value, Reader reader) {
        boolean tooSmall = !limit.least().isEmpty() && value.compareTo(reader.read(limit.least())) < 0;
        boolean tooLarge = !limit.most().isEmpty() && value.compareTo(reader.read(limit.most())) > 0;
        if (tooSmall || tooLarge) {
            throw new Refusal(
                    limit.component().getName(), shown, tooSmall ? "is too small" : "is too large", range(limit));
        }
    }

    private static String range(Limit limit) {
        if (limit.least().isEmpty()) {
            return "Enter at most " + limit.most();
        }
        return limit.most().isEmpty()
                ? "Enter at least " + limit.least()
                : "Enter from " + limit.least() + " to " + limit.most();
    }

    private static @Nullable Object value(RecordComponent component, Record inputs) {
        try {
            return component.getAccessor().invoke(inputs);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("component [" + component + "] is not readable", e);
        }
    }
}
