package org.firmset.spend;

import java.util.Optional;
import org.firmset.homestead.file.Fault;

/** Whether an uploaded file may be kept beside a receipt. */
public sealed interface DocumentCheck {
    /** The most a photo or paper may take, in bytes. */
    int MOST_BYTES = 16 << 20;

    /** As many of its first bytes tell what a file is. */
    int START = 16;

    /** It may be kept, under this hash. */
    record Accepted(DocumentType type, ContentHash hash) implements DocumentCheck {}

    /** It may not. */
    record Refused(Fault fault) implements DocumentCheck {}

    /** @param name the file's name, for the fault only */
    static DocumentCheck of(String name, byte[] content) {
        return of(name, content, content.length, ContentHash.of(content));
    }

    /**
     * The same for a file that is too big to be held.
     *
     * @param start its first bytes, {@link #START} of them when there are so many
     * @param bytes its size; of a file over the limit any size over it will do
     */
    static DocumentCheck of(String name, byte[] start, long bytes, ContentHash hash) {
        if (bytes > MOST_BYTES) {
            return refused(
                    name,
                    "has more than " + (MOST_BYTES >> 20) + " MiB",
                    "Take the picture again with fewer pixels, or scan at 200 dots an inch");
        }
        Optional<DocumentType> type = DocumentType.of(start);
        return type.isPresent()
                ? new Accepted(type.get(), hash)
                : refused(
                        name,
                        bytes == 0
                                ? "is empty"
                                : "is no JPEG, PNG, WebP or HEIC picture and no PDF, whatever its name says",
                        "Hand in a photo of the receipt, or print it to PDF");
    }

    private static DocumentCheck refused(String name, String problem, String remedy) {
        return new Refused(new Fault("document", name, problem, remedy));
    }
}
