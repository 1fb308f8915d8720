package org.firmset.trade.water;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.firmset.measure.Area;
import org.firmset.measure.Density;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Flow;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.Units;
import org.firmset.measure.Volume;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Inputs of a calculator as they are when nothing is written, but for what a test says. */
public final class Given<I extends Record> {
    private static final Map<Class<?>, Dimension> DIMENSIONS = Map.of(
            Length.class, Dimension.LENGTH,
            Area.class, Dimension.AREA,
            Volume.class, Dimension.VOLUME,
            Mass.class, Dimension.MASS,
            Density.class, Dimension.DENSITY,
            Pressure.class, Dimension.PRESSURE,
            Temperature.class, Dimension.TEMPERATURE,
            Flow.class, Dimension.FLOW,
            Speed.class, Dimension.SPEED);

    private final Kind<I> kind;
    private final Map<String, String> written;

    private Given(Kind<I> kind, Map<String, String> written) {
        this.kind = kind;
        this.written = written;
    }

    public static <I extends Record> Given<I> of(Kind<I> kind) {
        return new Given<>(kind, Map.of());
    }

    /** @param value as people write it */
    public Given<I> with(String component, String value) {
        if (Arrays.stream(kind.inputs().getRecordComponents())
                .noneMatch(c -> c.getName().equals(component))) {
            throw new IllegalArgumentException("component [" + component + "] must be one of " + kind.inputs());
        }
        Map<String, String> more = new HashMap<>(written);
        more.put(component, value);
        return new Given<>(kind, more);
    }

    public I inputs() {
        RecordComponent[] components = kind.inputs().getRecordComponents();
        @Nullable Object[] values = Arrays.stream(components).map(this::value).toArray();
        try {
            Constructor<I> constructor = kind.inputs()
                    .getDeclaredConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    public Worksheet work() {
        return kind.work(inputs());
    }

    private @Nullable Object value(RecordComponent component) {
        Described described = Objects.requireNonNull(component.getAnnotation(Described.class));
        String text = written.getOrDefault(component.getName(), described.usual());
        return text.isEmpty() ? null : value(component.getType(), text);
    }

    private static Object value(Class<?> type, String text) {
        if (type == Outlets.class) {
            return Outlets.parse(text);
        }
        if (type == int.class) {
            return Integer.valueOf(text);
        }
        if (type == boolean.class) {
            return Boolean.valueOf(text);
        }
        if (type == BigDecimal.class) {
            return new BigDecimal(text);
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .filter(c -> ((Enum<?>) c)
                            .name()
                            .toLowerCase(Locale.ROOT)
                            .replace('_', '-')
                            .equals(text))
                    .findFirst()
                    .orElseThrow();
        }
        Dimension dimension = Objects.requireNonNull(DIMENSIONS.get(type), () -> "no reader for " + type);
        Measured read = Units.parse(dimension, text);
        return dimension.of(read.value());
    }
}
