package org.firmset.homestead.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.part.Words;
import org.jspecify.annotations.Nullable;

/** Every key is there once, and everything that is named by its key is there. */
final class References {
    private References() {}

    static List<Fault> faults(Homestead homestead) {
        List<Fault> faults = new ArrayList<>();
        Map<String, Set<String>> keys = new HashMap<>();
        Walk.through(homestead, "", (owner, part, value, pointer) -> {
            if (part.described().key()) {
                String kind = Words.kindOf(owner.getClass());
                if (!keys.computeIfAbsent(kind, k -> new HashSet<>()).add((String) value)) {
                    faults.add(new Fault(
                            pointer,
                            (String) value,
                            "is the key of another " + kind + " already",
                            "Give each " + kind + " a key of its own"));
                }
            }
        });
        Walk.through(homestead, "", (owner, part, value, pointer) -> {
            String kind = part.described().names();
            if (faults.size() < Fault.MOST
                    && !kind.isEmpty()
                    && !keys.getOrDefault(kind, Set.of()).contains((String) value)) {
                faults.add(new Fault(
                        pointer,
                        (String) value,
                        "names a " + kind + " that is not there",
                        "Write the key of a " + kind + " of this file" + maybe((String) value, keys.get(kind))));
            }
        });
        return faults;
    }

    private static String maybe(String value, @Nullable Set<String> known) {
        if (known == null) {
            return "";
        }
        String start = value.substring(0, Math.min(3, value.length()));
        return known.stream()
                .filter(k -> k.startsWith(start))
                .sorted()
                .findFirst()
                .map(k -> ". Maybe '" + k + "' is meant")
                .orElse("");
    }
}
