package org.firmset.homestead.store;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/** The rows written so far, by the keys under which others name them. */
final class Named {
    private final Map<Kind, Map<String, Row<?>>> rows = new EnumMap<>(Kind.class);

    void add(Slot slot, Row<?> row) {
        Map<String, Row<?>> ofKind = rows.computeIfAbsent(slot.kind(), kind -> new HashMap<>());
        if (ofKind.putIfAbsent(slot.key(), row) != null) {
            throw new IllegalArgumentException("key [%s] of a %s in homestead [%s] must be unique"
                    .formatted(slot.key(), slot.kind().word(), slot.homestead().name()));
        }
    }

    PersonRow person(String key) {
        return (PersonRow) row(Kind.PERSON, key);
    }

    ToolRow tool(String key) {
        return (ToolRow) row(Kind.TOOL, key);
    }

    MaterialRow material(String key) {
        return (MaterialRow) row(Kind.MATERIAL, key);
    }

    VehicleRow vehicle(String key) {
        return (VehicleRow) row(Kind.VEHICLE, key);
    }

    TrailerRow trailer(String key) {
        return (TrailerRow) row(Kind.TRAILER, key);
    }

    SubprojectRow subproject(String key) {
        return (SubprojectRow) row(Kind.SUBPROJECT, key);
    }

    StageRow stage(String key) {
        return (StageRow) row(Kind.STAGE, key);
    }

    private Row<?> row(Kind kind, String key) {
        Row<?> row = rows.getOrDefault(kind, Map.of()).get(key);
        if (row == null) {
            throw new IllegalArgumentException(
                    "%s [%s] is named but is not in the homestead.%nMaybe it was removed, or its key is misspelt."
                            .formatted(kind.word(), key));
        }
        return row;
    }
}
