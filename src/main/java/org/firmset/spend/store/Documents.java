package org.firmset.spend.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentCheck;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/**
 * Photos and papers of receipts: files in the data folder, called by the SHA-256 of their bytes, so that the same bytes
 * are one file. What is there is whole. Thread-safe.
 */
@Service
public class Documents {
    /** What came of a file that was handed in. */
    public sealed interface Taken {
        /** It is in the data folder; a receipt may name it. */
        record Stored(KeptDocument document) implements Taken {}

        /** Nothing was stored. */
        record Refused(Fault fault) implements Taken {}
    }

    private final DocumentFolder folder;
    private final DocumentRows rows;
    private final Clock clock;

    Documents(@Value("${firmset.home}") Path home, DocumentRows rows, Clock clock) {
        this.folder = new DocumentFolder(home.resolve("documents"));
        this.rows = rows;
        this.clock = clock;
    }

    /**
     * Takes a file in; of one that is too big no more than the limit is read.
     *
     * @param name what people call the file
     * @throws IOException when it cannot be read or the data folder cannot be written
     */
    public synchronized Taken take(String name, InputStream in) throws IOException {
        DocumentFolder.Draft draft = folder.write(in);
        try {
            return switch (DocumentCheck.of(name, draft.start(), draft.bytes(), draft.hash())) {
                case DocumentCheck.Refused refused -> new Taken.Refused(refused.fault());
                case DocumentCheck.Accepted accepted -> {
                    folder.keep(draft, clock.instant());
                    KeptDocument document = new KeptDocument(draft.hash(), accepted.type(), name, draft.bytes());
                    rows.note(document);
                    yield new Taken.Stored(document);
                }
            };
        } finally {
            Files.deleteIfExists(draft.file());
        }
    }

    /**
     * Removes what no receipt refers to and was handed in longer ago than that. It and {@link #take} wait for each other,
     * so a file that is just coming in is not yet there to be removed.
     *
     * @return how many were removed
     */
    synchronized int removeUnused(Duration age) throws IOException {
        Instant time = clock.instant().minus(age);
        int removed = 0;
        for (ContentHash hash : rows.unused()) {
            if (!folder.isYounger(hash, time) && rows.forgetUnused(hash, () -> removeFile(hash))) {
                removed++;
            }
        }
        return removed;
    }

    /**
     * Removes what was half written when the program or the power ended, longer ago than that; no receipt can refer to it.
     *
     * @return how many were removed
     */
    synchronized int removeHalfWritten(Duration age) throws IOException {
        return folder.removeDrafts(clock.instant().minus(age));
    }

    /** The file goes before its row is gone for good: when that fails, the next time finds the row and ends it. */
    private void removeFile(ContentHash hash) {
        try {
            folder.remove(hash);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is known of a document, its name left out; empty when none with this hash was ever taken in. */
    public Optional<KeptDocument> find(ContentHash hash) {
        return rows.find(hash);
    }

    /** Where its bytes lie; empty when the file is gone or is not whole, as after a folder was copied in part. */
    public Optional<Path> file(KeptDocument document) {
        return folder.find(document.hash(), document.bytes());
    }
}
