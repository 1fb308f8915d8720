package org.firmset.homestead.file;

import java.util.Optional;
import org.firmset.measure.UnitSystem;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
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
        return switch (reading(heading, type, document)) {
            case Read.Whole<T> whole -> whole.content();
            case Read.Broken<T> broken ->
                throw new IllegalArgumentException("The document is no whole " + heading.format() + " document: "
                        + broken.fault().line());
        };
    }

    /** What came of reading. */
    public sealed interface Read<T extends Record> {
        /** All of it. */
        record Whole<T extends Record>(T content) implements Read<T> {}

        /** Nothing; the first thing that is wrong. @param ofThisKind whether it says that it is such a document */
        record Broken<T extends Record>(Fault fault, boolean ofThisKind) implements Read<T> {
            /** It may be one of a later version of the program. */
            public boolean ofAnotherVersion() {
                return ofThisKind && fault.pointer().equals("/" + Heading.VERSION_PROPERTY);
            }
        }
    }

    /** Reads what may be broken, or of another version or kind. */
    public static <T extends Record> Read<T> reading(Heading heading, Class<T> type, byte[] document) {
        if (!(tree(document) instanceof ObjectNode root)) {
            return new Read.Broken<>(
                    new Fault("", "", "is no whole JSON document", "It begins with { and ends with }"), false);
        }
        Optional<Fault> ofHeading = heading.faults(root).stream().findFirst();
        if (ofHeading.isPresent()) {
            boolean ofThisKind = !ofHeading.get().pointer().equals("/" + Heading.FORMAT_PROPERTY);
            return new Read.Broken<>(ofHeading.get(), ofThisKind);
        }
        RecordReader reader = new RecordReader();
        T content = reader.readRoot(root, type, Heading.PROPERTIES);
        return content == null ? new Read.Broken<>(reader.faults().getFirst(), true) : new Read.Whole<>(content);
    }

    private static @Nullable JsonNode tree(byte[] document) {
        try {
            return MAPPER.readTree(document);
        } catch (JacksonException e) {
            return null;
        }
    }
}
