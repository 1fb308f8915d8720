package org.firmset.plan.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Numbers for names, from 0 in the order they were given. */
final class Index {
    private final Map<String, Integer> numbers = new HashMap<>();

    Index(List<String> names) {
        names.forEach(name -> numbers.put(name, numbers.size()));
    }

    int of(String name) {
        return Objects.requireNonNull(numbers.get(name), () -> "name [" + name + "] is not known");
    }

    boolean knows(String name) {
        return numbers.containsKey(name);
    }

    int size() {
        return numbers.size();
    }
}
