package org.firmset.homestead.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.ScalarFault;
import org.firmset.homestead.part.Scalars;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads records from JSON by their components, and gathers every fault on the way. Not thread-safe; use one a file. */
final class RecordReader {
    private final List<Fault> faults = new ArrayList<>();

    List<Fault> faults() {
        return List.copyOf(faults);
    }

    /** The record, or null when there are faults. */
    <T extends Record> @Nullable T readRoot(ObjectNode node, Class<T> type, Set<String> alsoAllowed) {
        Object result = readRecord(node, type, "", alsoAllowed);
        return faults.isEmpty() ? type.cast(result) : null;
    }

    private @Nullable Object readRecord(ObjectNode node, Class<?> type, String pointer, Set<String> alsoAllowed) {
        List<Part> parts = Part.of(type);
        refuseUnknown(node.propertyNames(), parts, pointer, alsoAllowed);
        int before = faults.size();
        @Nullable Object[] values = new Object[parts.size()];
        for (int i = 0; i < values.length; i++) {
            Part part = parts.get(i);
            values[i] = readPart(node.get(part.name()), part, pointer + "/" + part.name());
        }
        return faults.size() == before ? Part.record(type, Arrays.asList(values)) : null;
    }

    private void refuseUnknown(Collection<String> names, List<Part> parts, String pointer, Set<String> alsoAllowed) {
        Set<String> known = parts.stream().map(Part::name).collect(Collectors.toSet());
        for (String name : names) {
            if (!known.contains(name) && !alsoAllowed.contains(name)) {
                fault(
                        pointer + "/" + escaped(name),
                        "",
                        "is not known here",
                        "Known are " + parts.stream().map(Part::name).collect(Collectors.joining(", ")));
            }
        }
    }

    private static String escaped(String name) {
        String shortened = name.length() > 60 ? name.substring(0, 60) : name;
        return shortened.replace("~", "~0").replace("/", "~1");
    }

    private @Nullable Object readPart(@Nullable JsonNode node, Part part, String pointer) {
        if (node == null || node.isNull()) {
            return absent(part, pointer);
        }
        return part.list() ? readList(node, part, pointer) : readValue(node, part, pointer);
    }

    private @Nullable Object absent(Part part, String pointer) {
        if (part.list()) {
            return List.of();
        }
        @Nullable Object usual = part.usual();
        if (usual != null) {
            return usual;
        }
        if (!part.optional()) {
            fault(pointer, "", "is missing", part.described().value().replaceAll("\\.$", ""));
        }
        return null;
    }

    private @Nullable Object readList(JsonNode node, Part part, String pointer) {
        if (!(node instanceof ArrayNode array)) {
            fault(pointer, node.toString(), "is not a list", "Write it in [ ]");
            return null;
        }
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < array.size() && faults.size() < Fault.MOST; i++) {
            Object value = readValue(array.get(i), part, pointer + "/" + i);
            if (value != null) {
                values.add(value);
            }
        }
        return values;
    }

    private @Nullable Object readValue(JsonNode node, Part part, String pointer) {
        if (part.type().isRecord() && !Scalars.isScalar(part.type())) {
            if (node instanceof ObjectNode object) {
                return readRecord(object, part.type(), pointer, Set.of());
            }
            fault(pointer, node.toString(), "is not an object", "Write it in { }");
            return null;
        }
        try {
            return Scalars.read(node, part);
        } catch (ScalarFault e) {
            fault(pointer, node.isString() ? node.stringValue() : node.toString(), e.problem(), e.remedy());
            return null;
        }
    }

    private void fault(String pointer, String value, String problem, String remedy) {
        if (faults.size() < Fault.MOST) {
            faults.add(new Fault(pointer, value, problem, remedy));
        }
    }
}
