package org.firmset.homestead.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.part.Part;
import org.jspecify.annotations.Nullable;

/** The parts of a homestead by their names, so that one form serves them all. */
final class Lists {
    private Lists() {}

    /** The part of the homestead with this name, such as "stages" or "travel". */
    static Optional<Part> part(String name) {
        return Part.of(Homestead.class).stream()
                .filter(p -> p.name().equals(name) && p.nested())
                .findFirst();
    }

    static List<Record> of(Homestead homestead, Part part) {
        List<?> list = (List<?>) Objects.requireNonNull(part.valueIn(homestead));
        return list.stream().map(Record.class::cast).toList();
    }

    /** The homestead with another value for one of its parts. */
    static Homestead with(Homestead homestead, Part changed, @Nullable Object value) {
        List<@Nullable Object> values = new ArrayList<>();
        for (Part part : Part.of(Homestead.class)) {
            values.add(part.name().equals(changed.name()) ? value : part.valueIn(homestead));
        }
        return Part.record(Homestead.class, values);
    }

    static Optional<String> key(Record thing) {
        return Part.of(thing.getClass()).stream()
                .filter(p -> p.described().key())
                .findFirst()
                .map(p -> (String) Objects.requireNonNull(p.valueIn(thing)));
    }

    /** What a person calls it: its name, or what it says first. */
    static String name(Record thing, Surroundings surroundings) {
        List<Part> parts = Part.of(thing.getClass());
        Optional<String> name = parts.stream()
                .filter(p -> p.name().equals("name"))
                .findFirst()
                .map(p -> (String) Objects.requireNonNull(p.valueIn(thing)));
        return name.orElseGet(() -> parts.stream()
                .limit(2)
                .map(p -> shown(p, thing, surroundings))
                .filter(text -> !text.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse(""));
    }

    /** The value of one part in a few words; empty when it is left out. */
    static String shown(Part part, Record thing, Surroundings surroundings) {
        @Nullable Object value = part.valueIn(thing);
        if (value == null) {
            return "";
        }
        if (part.list() && part.nested()) {
            return Integer.toString(((List<?>) value).size());
        }
        boolean names = !part.described().names().isEmpty();
        return names && value instanceof String key
                ? surroundings.named(part.described().names()).getOrDefault(key, key)
                : Part.shown(value, surroundings.units());
    }

    /** The number of the thing with this key, or with this number where things have no key. */
    static Optional<Integer> find(List<Record> things, String item) {
        for (int i = 0; i < things.size(); i++) {
            String id = key(things.get(i)).orElse(Integer.toString(i));
            if (id.equals(item)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
