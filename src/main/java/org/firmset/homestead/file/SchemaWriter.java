package org.firmset.homestead.file;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Objects;
import java.util.stream.Collectors;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.Scalars;
import org.firmset.homestead.part.Words;
import org.firmset.measure.Described;
import org.firmset.measure.Dimension;
import org.firmset.measure.Hours;
import org.javamoney.moneta.Money;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes the JSON Schema of the homestead file from the records and their descriptions. */
final class SchemaWriter {
    private static final String NUMBER = "([+-]?\\d+(\\.\\d+)?(\\s+\\d+/\\d+)?|\\d+/\\d+)";

    private final ObjectNode definitions;

    private SchemaWriter(ObjectNode definitions) {
        this.definitions = definitions;
    }

    /**
     * @param title what the document is called
     * @param heading the format and version its first two properties name
     */
    static ObjectNode schema(ObjectNode root, String title, Class<? extends Record> type, Heading heading) {
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", title);
        ObjectNode definitions = root.objectNode();
        new SchemaWriter(definitions).describe(root, type);
        ObjectNode properties = (ObjectNode) root.get("properties");
        properties.putObject(Heading.FORMAT_PROPERTY).put("const", heading.format());
        properties.putObject(Heading.VERSION_PROPERTY).put("const", heading.version());
        properties.putObject("$schema").put("type", "string");
        ((ArrayNode) root.get("required")).add(Heading.FORMAT_PROPERTY).add(Heading.VERSION_PROPERTY);
        root.set("$defs", definitions);
        return root;
    }

    private void describe(ObjectNode node, Class<?> recordType) {
        node.put(
                "description",
                Objects.requireNonNull(recordType.getAnnotation(Described.class))
                        .value());
        node.put("type", "object");
        ObjectNode properties = node.putObject("properties");
        ArrayNode required = node.putArray("required");
        for (Part part : Part.of(recordType)) {
            property(properties.putObject(part.name()), part);
            if (!part.optional() && !part.list() && part.usual() == null) {
                required.add(part.name());
            }
        }
        node.put("additionalProperties", false);
    }

    private void property(ObjectNode node, Part part) {
        node.put("description", describedWithLimits(part.described()));
        if (part.list()) {
            node.put("type", "array");
            value(node.putObject("items"), part);
        } else {
            value(node, part);
        }
    }

    private static String describedWithLimits(Described described) {
        StringBuilder text = new StringBuilder(described.value());
        if (!described.names().isEmpty()) {
            text.append(" Key of a ").append(described.names()).append('.');
        }
        if (!described.least().isEmpty()) {
            text.append(" At least ").append(described.least()).append('.');
        }
        if (!described.most().isEmpty()) {
            text.append(" At most ").append(described.most()).append('.');
        }
        if (!described.usual().isEmpty()) {
            text.append(" Left out it is ").append(described.usual()).append('.');
        }
        return text.toString();
    }

    private void value(ObjectNode node, Part part) {
        Class<?> type = part.type();
        Described described = part.described();
        if (Scalars.DIMENSIONS.containsKey(type)) {
            node.put("type", "string").put("pattern", pattern(Objects.requireNonNull(Scalars.DIMENSIONS.get(type))));
        } else if (type.isRecord() && type != Hours.class) {
            node.put("$ref", "#/$defs/" + definition(type));
        } else if (type.isEnum()) {
            ArrayNode words = node.putArray("enum");
            Words.allOf(type).forEach(words::add);
        } else if (type == boolean.class) {
            node.put("type", "boolean");
        } else if (type == int.class || type == Integer.class || type == BigDecimal.class) {
            number(node.put("type", type == BigDecimal.class ? "number" : "integer"), described);
        } else {
            text(node.put("type", "string"), type, described);
        }
    }

    private static void number(ObjectNode node, Described described) {
        if (!described.least().isEmpty()) {
            node.put("minimum", new BigDecimal(described.least()));
        }
        if (!described.most().isEmpty()) {
            node.put("maximum", new BigDecimal(described.most()));
        }
    }

    private static void text(ObjectNode node, Class<?> type, Described described) {
        if (type == LocalDate.class) {
            node.put("format", "date");
        } else if (type == MonthDay.class) {
            node.put("pattern", "^--\\d{2}-\\d{2}$");
        } else if (type == Money.class) {
            node.put("pattern", "^\\s*\\d{1,12}(\\.\\d{1,2})?\\s*[A-Z]{3}\\s*$");
        } else if (type == Hours.class) {
            node.put("pattern", "^\\s*(\\d+(\\.\\d+)?\\s*h)?\\s*(\\d+\\s*min)?\\s*$");
        } else if (described.key() || !described.names().isEmpty()) {
            node.put("pattern", "^" + Scalars.KEY.pattern() + "$");
        } else {
            node.put("minLength", 1).put("maxLength", Scalars.LONGEST_TEXT);
        }
    }

    /** The symbols with their other spellings are checked by the reader; the pattern keeps to their common shape. */
    private static String pattern(Dimension dimension) {
        String symbols = dimension.units().keySet().stream().collect(Collectors.joining("|"));
        return "^\\s*(" + NUMBER + "\\s*(" + symbols + "|[\\p{L}°'\"]{1,5}[23²³]?)\\s*)+$";
    }

    private String definition(Class<?> recordType) {
        String name = recordType.getSimpleName();
        if (!definitions.has(name)) {
            describe(definitions.putObject(name), recordType);
        }
        return name;
    }
}
