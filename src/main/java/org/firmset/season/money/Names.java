package org.firmset.season.money;

import java.util.HashMap;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.spend.Keys;
import org.jspecify.annotations.Nullable;

/** What people call the things of a homestead, by their keys. */
final class Names {
    static final String NOBODY = "Not said yet";
    static final String AS_A_WHOLE = "As a whole";
    /** Behind the key of what was removed from the homestead and stays on receipts and in kept budgets. */
    private final Map<String, String> subprojects = new HashMap<>();

    private final Map<String, String> stages = new HashMap<>();
    private final Map<String, String> things = new HashMap<>();
    private final Map<String, String> suppliers = new HashMap<>();

    Names(Homestead homestead) {
        homestead.subprojects().forEach(s -> subprojects.put(s.key(), s.name()));
        homestead.stages().forEach(s -> stages.put(s.key(), s.name()));
        homestead.materials().forEach(m -> things.put(m.key(), m.name()));
        homestead.suppliers().forEach(s -> suppliers.put(s.key(), s.name()));
    }

    String subproject(@Nullable String key) {
        return key == null ? NOBODY : subprojects.getOrDefault(key, key + Keys.GONE);
    }

    String stage(@Nullable String key) {
        return key == null ? AS_A_WHOLE : stages.getOrDefault(key, key + Keys.GONE);
    }

    String material(String key) {
        return things.getOrDefault(key, key);
    }

    String supplier(String key) {
        return suppliers.getOrDefault(key, key);
    }
}
