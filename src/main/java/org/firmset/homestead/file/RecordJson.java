package org.firmset.homestead.file;

import org.firmset.measure.UnitSystem;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Writes described records as JSON documents, and the schemas of such documents. Thread-safe. */
public final class RecordJson {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private RecordJson() {}

    /**
     * The record as text, with a line feed at its end; what is absent or empty is left out. Quantities are in these units
     * where they come out exact, and read back equal.
     */
    public static String write(Heading heading, Record content, UnitSystem units) {
        ObjectNode document = MAPPER.createObjectNode();
        heading.writeInto(document);
        RecordWriter.writeInto(document, content, units);
        return MAPPER.writeValueAsString(document) + "\n";
    }

    /** JSON Schema (draft 2020-12) of the documents that {@link #write} makes of records of a type. */
    public static String schema(String title, Heading heading, Class<? extends Record> type) {
        return MAPPER.writeValueAsString(SchemaWriter.schema(MAPPER.createObjectNode(), title, type, heading)) + "\n";
    }

    /**
     * Reads back what {@link #write} made.
     *
     * @throws IllegalArgumentException when the document is not of this kind, or broken
     */
    public static <T extends Record> T read(Heading heading, Class<T> type, byte[] document) {
        RecordReader reader = new RecordReader();
        T content = MAPPER.readTree(document) instanceof ObjectNode root
                        && heading.faults(root).isEmpty()
                ? reader.readRoot(root, type, Heading.PROPERTIES)
                : null;
        if (content == null) {
            throw new IllegalArgumentException("The document is no whole " + heading.format() + " document: "
                    + reader.faults().stream().findFirst().map(Fault::line).orElse("its heading is missing"));
        }
        return content;
    }
}
