package org.firmset.spend;

import java.util.Optional;
import org.firmset.homestead.file.Fault;

/** Whether an uploaded file may be kept beside a receipt. */
public sealed interface DocumentCheck {
    /** The most a photo or paper may take, in bytes. */
    int MOST_BYTES = 20 << 20;

    /** It may be kept, under this hash. */
    record Accepted(DocumentType type, ContentHash hash) implements DocumentCheck {}

    /** It may not. */
    record Refused(Fault fault) implements DocumentCheck {}

    /** @param name the file's name, for the fault only */
    static DocumentCheck of(String name, byte[] content) {
        if (content.length > MOST_BYTES) {
            return refused(
                    name,
                    "has " + (content.length >> 20) + " MiB, more than " + (MOST_BYTES >> 20),
                    "Take the picture again with fewer pixels, or scan at 200 dots an inch");
        }
        Optional<DocumentType> type = DocumentType.of(content);
        return type.isPresent()
                ? new Accepted(type.get(), ContentHash.of(content))
                : refused(
                        name,
                        content.length == 0
                                ? "is empty"
                                : "is no JPEG, PNG, WebP or HEIC picture and no PDF, whatever its name says",
                        "Hand in a photo of the receipt, or print it to PDF");
    }

    private static DocumentCheck refused(String name, String problem, String remedy) {
        return new Refused(new Fault("document", name, problem, remedy));
    }
}
