package org.firmset.homestead.file;

import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The first two properties of a document: what it is and of which version.
 *
 * @param format such as "firmset-homestead"
 */
public record Heading(String format, int version) {
    static final String FORMAT_PROPERTY = "format";
    static final String VERSION_PROPERTY = "version";
    static final Set<String> PROPERTIES = Set.of(FORMAT_PROPERTY, VERSION_PROPERTY, "$schema");

    void writeInto(ObjectNode document) {
        document.put(FORMAT_PROPERTY, format);
        document.put(VERSION_PROPERTY, version);
    }

    List<Fault> faults(ObjectNode document) {
        JsonNode written = document.path(FORMAT_PROPERTY);
        if (!written.isString() || !written.stringValue().equals(format)) {
            return List.of(new Fault(
                    "/" + FORMAT_PROPERTY,
                    written.isMissingNode() ? "" : written.toString(),
                    "does not say that this is a " + format.substring(format.indexOf('-') + 1) + " file",
                    "Write \"" + format + "\" if it is one"));
        }
        JsonNode number = document.path(VERSION_PROPERTY);
        if (!number.isInt() || number.intValue() != version) {
            return List.of(new Fault(
                    "/" + VERSION_PROPERTY,
                    number.isMissingNode() ? "" : number.toString(),
                    "is not a version this program reads",
                    "It reads version " + version + "; a file of a later version needs a later program"));
        }
        return List.of();
    }
}
