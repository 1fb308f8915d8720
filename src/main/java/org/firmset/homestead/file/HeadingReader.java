package org.firmset.homestead.file;

import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The first two properties: whose file this is and of which version. */
final class HeadingReader {
    static final String FORMAT_PROPERTY = "format";
    static final String VERSION_PROPERTY = "version";
    static final Set<String> PROPERTIES = Set.of(FORMAT_PROPERTY, VERSION_PROPERTY, "$schema");

    private HeadingReader() {}

    static List<Fault> faults(ObjectNode document) {
        JsonNode format = document.path(FORMAT_PROPERTY);
        if (!format.isString() || !format.stringValue().equals(HomesteadFile.FORMAT)) {
            return List.of(new Fault(
                    "/" + FORMAT_PROPERTY,
                    format.isMissingNode() ? "" : format.toString(),
                    "does not say that this is a homestead file",
                    "Write \"" + HomesteadFile.FORMAT + "\" if it is one"));
        }
        JsonNode version = document.path(VERSION_PROPERTY);
        if (!version.isInt() || version.intValue() != HomesteadFile.VERSION) {
            return List.of(new Fault(
                    "/" + VERSION_PROPERTY,
                    version.isMissingNode() ? "" : version.toString(),
                    "is not a version this program reads",
                    "It reads version " + HomesteadFile.VERSION + "; a file of a later version needs a later program"));
        }
        return List.of();
    }
}
