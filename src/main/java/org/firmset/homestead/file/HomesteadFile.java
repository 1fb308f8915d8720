package org.firmset.homestead.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.firmset.homestead.Homestead;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads and writes the homestead file. Its shape follows the homestead records, its limits their descriptions; what is
 * written reads back equal. Thread-safe.
 */
public final class HomesteadFile {
    public static final Heading HEADING = new Heading("firmset-homestead", 1);

    /** No homestead needs more; what is longer is refused before it is looked at. */
    static final int LONGEST_BYTES = 8_000_000;

    private static final int DEEPEST = 32;
    /** Some editors write it at the start of UTF-8. */
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxStringLength(20_000)
                            .maxNumberLength(40)
                            .maxNameLength(200)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private HomesteadFile() {}

    /** Reads at most as many bytes as a homestead file may have. */
    public static Reading read(InputStream in) throws IOException {
        return read(in.readNBytes(LONGEST_BYTES + 1));
    }

    public static Reading read(byte[] bytes) {
        if (bytes.length > LONGEST_BYTES) {
            return refused(
                    "is larger than %,d bytes".formatted(LONGEST_BYTES),
                    "Keep photos and notes elsewhere; a homestead file holds the description only");
        }
        try {
            int start = startsWithMark(bytes) ? BYTE_ORDER_MARK.length : 0;
            return read(MAPPER.readTree(bytes, start, bytes.length - start));
        } catch (JacksonException e) {
            return notJson(place(e.getLocation()) + ": " + firstSentence(e.getOriginalMessage()));
        } catch (NumberFormatException e) {
            return notJson(": it holds a number out of all proportion");
        }
    }

    private static boolean startsWithMark(byte[] bytes) {
        int length = BYTE_ORDER_MARK.length;
        return bytes.length >= length && Arrays.equals(bytes, 0, length, BYTE_ORDER_MARK, 0, length);
    }

    private static Reading notJson(String whereAndWhy) {
        return refused("is not readable as JSON" + whereAndWhy, "Mend it there, or export the homestead again");
    }

    private static Reading read(JsonNode root) {
        if (!(root instanceof ObjectNode document)) {
            return refused("is not a JSON object", "Start it with { \"format\": \"" + HEADING.format() + "\", ...");
        }
        List<Fault> heading = HEADING.faults(document);
        if (!heading.isEmpty()) {
            return new Reading.Refused(heading);
        }
        RecordReader reader = new RecordReader();
        Homestead homestead = reader.readRoot(document, Homestead.class, Heading.PROPERTIES);
        if (homestead == null) {
            return new Reading.Refused(reader.faults());
        }
        List<Fault> broken = HomesteadRules.faults(homestead);
        return broken.isEmpty() ? new Reading.Accepted(homestead) : new Reading.Refused(broken);
    }

    private static String place(TokenStreamLocation location) {
        return location == null ? "" : " at line %d, column %d".formatted(location.getLineNr(), location.getColumnNr());
    }

    private static String firstSentence(String message) {
        String line = message.lines().findFirst().orElse("");
        int end = line.indexOf(" (");
        return end > 0 ? line.substring(0, end) : line;
    }

    private static Reading refused(String problem, String remedy) {
        return new Reading.Refused(List.of(new Fault("", "", problem, remedy)));
    }

    /** The whole homestead as text, with a line feed at its end. */
    public static String write(Homestead homestead) {
        return RecordJson.write(HEADING, homestead, homestead.units());
    }

    public static byte[] bytes(Homestead homestead) {
        return write(homestead).getBytes(StandardCharsets.UTF_8);
    }

    /** The JSON Schema (draft 2020-12) of the file, made from the same descriptions as its reader. */
    public static String schema() {
        return RecordJson.schema("Homestead file", HEADING, Homestead.class);
    }
}
