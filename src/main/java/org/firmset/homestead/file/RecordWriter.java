package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.Scalars;
import org.firmset.measure.UnitSystem;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes records as JSON; what is absent or empty is left out. */
final class RecordWriter {
    private RecordWriter() {}

    static void writeInto(ObjectNode node, Record owner, UnitSystem units) {
        for (Part part : Part.of(owner.getClass())) {
            @Nullable Object value = part.valueIn(owner);
            if (value instanceof List<?> list) {
                if (!list.isEmpty()) {
                    ArrayNode array = node.putArray(part.name());
                    list.forEach(element -> add(array, element, units));
                }
            } else if (value != null) {
                put(node, part.name(), value, units);
            }
        }
    }

    private static void add(ArrayNode array, Object element, UnitSystem units) {
        if (isObject(element)) {
            writeInto(array.addObject(), (Record) element, units);
        } else {
            array.add(Scalars.write(element, units));
        }
    }

    private static void put(ObjectNode node, String name, Object value, UnitSystem units) {
        switch (value) {
            case Integer number -> node.put(name, number);
            case Boolean truth -> node.put(name, truth);
            case BigDecimal number -> node.put(name, number);
            default -> {
                if (isObject(value)) {
                    writeInto(node.putObject(name), (Record) value, units);
                } else {
                    node.put(name, Scalars.write(value, units));
                }
            }
        }
    }

    private static boolean isObject(Object value) {
        return value instanceof Record && !Scalars.isScalar(value.getClass());
    }
}
