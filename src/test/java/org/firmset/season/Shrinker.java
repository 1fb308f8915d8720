package org.firmset.season;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.jspecify.annotations.Nullable;

/**
 * Makes a failing homestead small: parts of lists go, half a list at a time and then one by one, optional parts go,
 * hours and whole numbers become less, as long as it still fails. What names a part that has gone goes with it.
 */
final class Shrinker {
    private static final int MOST_TRIES = 4000;
    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            return type.getRecordComponents();
        }
    };

    private final Predicate<Homestead> fails;
    private int tries;

    private Shrinker(Predicate<Homestead> fails) {
        this.fails = fails;
    }

    /** @param fails true for the homestead, and for what it is to be made into */
    static Homestead shrink(Homestead homestead, Predicate<Homestead> fails) {
        Shrinker shrinker = new Shrinker(fails);
        Homestead smallest = homestead;
        Homestead smaller = shrinker.step(smallest);
        while (smaller != null) {
            smallest = smaller;
            smaller = shrinker.step(smallest);
        }
        return smallest;
    }

    /** The first smaller homestead that still fails; null when there is none. */
    private @Nullable Homestead step(Homestead from) {
        for (Record candidate : smaller(from)) {
            if (++tries > MOST_TRIES) {
                return null;
            }
            Homestead sound = (Homestead) withoutLoose(candidate, keys(candidate, new HashMap<>()));
            if (!sound.equals(from) && fails.test(sound)) {
                return sound;
            }
        }
        return null;
    }

    private static List<Record> smaller(Record whole) {
        List<Record> result = new ArrayList<>();
        RecordComponent[] components = components(whole);
        for (int i = 0; i < components.length; i++) {
            @Nullable Object value = value(whole, components[i]);
            for (@Nullable Object less : less(value, components[i])) {
                result.add(with(whole, i, less));
            }
        }
        return result;
    }

    private static List<@Nullable Object> less(@Nullable Object value, RecordComponent component) {
        List<@Nullable Object> result = new ArrayList<>();
        if (value == null) {
            return result;
        }
        if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
            result.add(null);
        }
        switch (value) {
            case List<?> list -> result.addAll(lessOf(list));
            case Hours hours -> result.addAll(lessOf(hours));
            case Integer number -> result.addAll(lessOf(number, component));
            case Record part when isDescribed(part) -> result.addAll(smaller(part));
            default -> {}
        }
        return result;
    }

    private static List<Object> lessOf(List<?> list) {
        List<Object> result = new ArrayList<>();
        for (int size = list.size(); size >= 1; size /= 2) {
            for (int from = 0; from + size <= list.size(); from += size) {
                List<Object> rest = new ArrayList<>(list);
                rest.subList(from, from + size).clear();
                result.add(rest);
            }
        }
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) instanceof Record part && isDescribed(part)) {
                for (Record less : smaller(part)) {
                    List<Object> changed = new ArrayList<>(list);
                    changed.set(i, less);
                    result.add(changed);
                }
            }
        }
        return result;
    }

    private static List<Object> lessOf(Hours hours) {
        return hours.quarters() > 1 ? List.of(new Hours(1), new Hours(hours.quarters() / 2)) : List.of();
    }

    private static List<Object> lessOf(Integer number, RecordComponent component) {
        String least =
                Objects.requireNonNull(component.getAnnotation(Described.class)).least();
        int to = least.isEmpty() ? 0 : new BigDecimal(least).intValueExact();
        return number > to ? List.of(to, to + (number - to) / 2) : List.of();
    }

    private static boolean isDescribed(Record part) {
        return part.getClass().isAnnotationPresent(Described.class);
    }

    private static Map<String, Set<String>> keys(Record whole, Map<String, Set<String>> into) {
        for (RecordComponent component : components(whole)) {
            @Nullable Object value = value(whole, component);
            Described described = component.getAnnotation(Described.class);
            if (described != null && described.key()) {
                into.computeIfAbsent(kind(whole), k -> new HashSet<>()).add(String.valueOf(value));
            }
            List<?> parts = value instanceof List<?> list ? list : value == null ? List.of() : List.of(value);
            parts.stream()
                    .filter(p -> p instanceof Record part && isDescribed(part))
                    .forEach(p -> keys((Record) p, into));
        }
        return into;
    }

    private static String kind(Record owner) {
        return owner.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
    }

    /** The same without what names something that is not there. */
    private static Record withoutLoose(Record whole, Map<String, Set<String>> keys) {
        Record result = whole;
        RecordComponent[] components = components(whole);
        for (int i = 0; i < components.length; i++) {
            @Nullable Object value = value(whole, components[i]);
            @Nullable Object kept = kept(value, components[i], keys);
            result = Objects.equals(kept, value) ? result : with(result, i, kept);
        }
        return result;
    }

    private static @Nullable Object kept(
            @Nullable Object value, RecordComponent component, Map<String, Set<String>> keys) {
        if (value instanceof List<?> list) {
            return list.stream()
                    .filter(e -> e instanceof Record part ? !isLoose(part, keys) : isThere(e, component, keys))
                    .map(e -> e instanceof Record part && isDescribed(part) ? withoutLoose(part, keys) : e)
                    .toList();
        }
        if (value instanceof Record part && isDescribed(part)) {
            return withoutLoose(part, keys);
        }
        boolean optional = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return value == null || (optional && !isThere(value, component, keys)) ? null : value;
    }

    /** True as well for what names nothing. */
    private static boolean isThere(Object value, RecordComponent component, Map<String, Set<String>> keys) {
        Described described = component.getAnnotation(Described.class);
        return described == null
                || described.names().isEmpty()
                || keys.getOrDefault(described.names(), Set.of()).contains(String.valueOf(value));
    }

    private static boolean isLoose(Record part, Map<String, Set<String>> keys) {
        return isDescribed(part)
                && Arrays.stream(components(part))
                        .filter(c -> value(part, c) instanceof String)
                        .anyMatch(c -> !isThere(String.valueOf(value(part, c)), c, keys));
    }

    private static RecordComponent[] components(Record whole) {
        return COMPONENTS.get(whole.getClass());
    }

    private static @Nullable Object value(Record owner, RecordComponent component) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("component [" + component + "] is not readable", e);
        }
    }

    private static Record with(Record whole, int at, @Nullable Object part) {
        RecordComponent[] components = components(whole);
        @Nullable Object[] values = new Object[components.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = i == at ? part : value(whole, components[i]);
        }
        try {
            return (Record) whole.getClass().getDeclaredConstructors()[0].newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("record [" + whole.getClass() + "] could not be made", e);
        }
    }
}
