package org.firmset.spend;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;

/**
 * What receipts may refer to.
 *
 * @param stages the subproject of each stage
 */
public record Keys(Set<String> subprojects, Map<String, String> stages, Set<String> materials) {
    /** Stands behind what receipts name and the homestead no longer has. */
    public static final String GONE = " (no longer there)";

    private static final int MOST_SHOWN = 8;

    public Keys {
        subprojects = Set.copyOf(subprojects);
        stages = Map.copyOf(stages);
        materials = Set.copyOf(materials);
    }

    public static Keys of(Homestead homestead) {
        return new Keys(
                homestead.subprojects().stream().map(Subproject::key).collect(Collectors.toSet()),
                homestead.stages().stream().collect(Collectors.toMap(Stage::key, Stage::subproject)),
                homestead.materials().stream().map(Material::key).collect(Collectors.toSet()));
    }

    List<String> stagesOf(String subproject) {
        return stages.keySet().stream()
                .filter(s -> subproject.equals(stages.get(s)))
                .toList();
    }

    /** The remedy for a key that is none: those there are, as far as they fit in a line. */
    static String oneOf(Collection<String> known) {
        if (known.isEmpty()) {
            return "Leave it out; there is none yet";
        }
        String shown = known.stream().sorted().limit(MOST_SHOWN).collect(Collectors.joining(", "));
        return "Write one of " + shown + (known.size() > MOST_SHOWN ? " and so on" : "");
    }
}
