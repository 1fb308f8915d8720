package org.firmset.homestead.store;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Walks through a record and all records inside it. */
final class RecordTree {
    private RecordTree() {}

    /**
     * The places where a round trip could go wrong unseen: what is null, empty, zero or false (an unmapped column gives
     * the same), lists whose order does not show, and neighbours with the same value (one may be kept as the other).
     */
    static List<String> gaps(Record root) {
        List<String> gaps = new ArrayList<>();
        collectGaps(root.getClass().getSimpleName(), root, gaps);
        return gaps;
    }

    private static void collectGaps(String path, @Nullable Object value, List<String> gaps) {
        switch (value) {
            case null -> gaps.add(path + " is null");
            case Record record -> collectGapsOfRecord(path, record, gaps);
            case List<?> list -> collectGapsOfList(path, list, gaps);
            default -> {
                if (isNothing(value)) {
                    gaps.add(path + " is " + value);
                }
            }
        }
    }

    private static void collectGapsOfRecord(String path, Record record, List<String> gaps) {
        Map<Object, String> seen = new HashMap<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            String place = path + "." + component.getName();
            Object value = value(record, component);
            collectGaps(place, value, gaps);
            String twin = value == null || value instanceof Boolean ? null : seen.putIfAbsent(value, place);
            if (twin != null) {
                gaps.add(place + " is the same as " + twin);
            }
        }
    }

    private static void collectGapsOfList(String path, List<?> list, List<String> gaps) {
        if (new HashSet<>(list).size() < Math.max(2, list.size())) {
            gaps.add(path + " has fewer than two values, or the same twice: " + list);
        }
        for (int i = 0; i < list.size(); i++) {
            collectGaps(path + "[" + i + "]", list.get(i), gaps);
        }
    }

    private static boolean isNothing(Object value) {
        return switch (value) {
            case String text -> text.isBlank();
            case Boolean yes -> !yes;
            case Integer number -> number == 0;
            case BigDecimal number -> number.signum() == 0;
            case Money money -> money.isZero();
            default -> false;
        };
    }

    /** The same record with every list in it, however deep, turned round. */
    static <R extends Record> R reversed(R record) {
        return rebuilt(record, component -> reversedValue(value(record, component)));
    }

    /** The same record with one component changed. */
    static <R extends Record> R with(R record, String name, @Nullable Object wanted) {
        return rebuilt(record, component -> component.getName().equals(name) ? wanted : value(record, component));
    }

    private static <R extends Record> R rebuilt(R record, Function<RecordComponent, @Nullable Object> values) {
        Class<?>[] types = components(record).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            @SuppressWarnings("unchecked")
            Constructor<R> canonical = (Constructor<R>) record.getClass().getDeclaredConstructor(types);
            return canonical.newInstance(components(record).map(values).toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static @Nullable Object reversedValue(@Nullable Object value) {
        return switch (value) {
            case null -> null;
            case Record inner -> reversed(inner);
            case List<?> list ->
                list.stream().map(RecordTree::reversedValue).toList().reversed();
            default -> value;
        };
    }

    private static Stream<RecordComponent> components(Record record) {
        return Stream.of(record.getClass().getRecordComponents());
    }

    private static @Nullable Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
