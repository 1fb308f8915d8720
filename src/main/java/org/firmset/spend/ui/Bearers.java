package org.firmset.spend.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;
import org.firmset.spend.Keys;
import org.firmset.spend.Share;
import org.jspecify.annotations.Nullable;

/** Who may bear a cost, in words. What was removed from the homestead keeps its key and says so. */
final class Bearers {
    private final Map<String, String> subprojects = new HashMap<>();
    private final Map<String, String> stages = new HashMap<>();
    private final List<Bearer> all = new ArrayList<>();

    Bearers(Homestead homestead) {
        homestead.stages().forEach(s -> stages.put(s.key(), s.name()));
        for (Subproject subproject : homestead.subprojects()) {
            subprojects.put(subproject.key(), subproject.name());
            all.add(new Bearer(subproject.key(), null));
            homestead.stages().stream()
                    .filter(s -> s.subproject().equals(subproject.key()))
                    .map(Stage::key)
                    .forEach(s -> all.add(new Bearer(subproject.key(), s)));
        }
    }

    /** @param stage null for the subproject as a whole */
    record Bearer(String subproject, @Nullable String stage) {
        static Bearer of(Share share) {
            return new Bearer(share.subproject(), share.stage());
        }
    }

    /** Each subproject and behind it its stages. */
    List<Bearer> all() {
        return List.copyOf(all);
    }

    String words(Bearer bearer) {
        String subproject = subproject(bearer.subproject());
        return bearer.stage() == null ? subproject : subproject + ": " + stage(bearer.stage());
    }

    String subproject(String key) {
        return subprojects.getOrDefault(key, key + Keys.GONE);
    }

    String stage(String key) {
        return stages.getOrDefault(key, key + Keys.GONE);
    }
}
