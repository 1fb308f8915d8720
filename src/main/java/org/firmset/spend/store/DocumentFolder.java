package org.firmset.spend.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentCheck;

/**
 * Files called by the hash of their bytes, as documents/ab/abcdef. They are written aside and moved into place whole, so
 * that a power cut leaves no half of one.
 */
record DocumentFolder(Path root) {
    private static final int BUFFER = 1 << 16;
    private static final String DRAFT = "new-";
    private static final String HALF = ".part";

    /** A file that was written aside; of a file over the limit only its beginning. */
    record Draft(Path file, byte[] start, long bytes, ContentHash hash) {}

    Draft write(InputStream in) throws IOException {
        Files.createDirectories(root);
        Path file = Files.createTempFile(root, DRAFT, HALF);
        MessageDigest digest = sha256();
        byte[] start = {};
        long bytes = 0;
        try (FileChannel out = FileChannel.open(file, StandardOpenOption.WRITE)) {
            byte[] buffer = new byte[BUFFER];
            int read;
            while (bytes <= DocumentCheck.MOST_BYTES && (read = in.readNBytes(buffer, 0, BUFFER)) > 0) {
                start = bytes == 0 ? Arrays.copyOf(buffer, Math.min(read, DocumentCheck.START)) : start;
                digest.update(buffer, 0, read);
                writeAll(out, ByteBuffer.wrap(buffer, 0, read));
                bytes += read;
            }
            out.force(true);
        } catch (IOException e) {
            Files.deleteIfExists(file);
            throw e;
        }
        return new Draft(file, start, bytes, new ContentHash(HexFormat.of().formatHex(digest.digest())));
    }

    private static void writeAll(FileChannel out, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            out.write(bytes);
        }
    }

    /** Moves it to its place, unless the same bytes lie there already; it counts as handed in now in either case. */
    void keep(Draft draft, Instant now) throws IOException {
        Path place = place(draft.hash());
        if (find(draft.hash(), draft.bytes()).isEmpty()) {
            Files.createDirectories(place.getParent());
            Files.move(draft.file(), place, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.setLastModifiedTime(place, FileTime.from(now));
    }

    /** Whether it was handed in after that time. */
    boolean isYounger(ContentHash hash, Instant time) throws IOException {
        Path place = place(hash);
        return Files.exists(place)
                && Files.getLastModifiedTime(place).toInstant().isAfter(time);
    }

    void remove(ContentHash hash) throws IOException {
        Files.deleteIfExists(place(hash));
    }

    /**
     * Removes what was written aside before that time and never moved into place, as after a power cut.
     *
     * @return how many were removed
     */
    int removeDrafts(Instant before) throws IOException {
        int removed = 0;
        if (!Files.isDirectory(root)) {
            return removed;
        }
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(root, DRAFT + "*" + HALF)) {
            for (Path draft : drafts) {
                BasicFileAttributes is =
                        Files.readAttributes(draft, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
                if (is.isRegularFile() && is.lastModifiedTime().toInstant().isBefore(before)) {
                    removed += Files.deleteIfExists(draft) ? 1 : 0;
                }
            }
        }
        return removed;
    }

    Optional<Path> find(ContentHash hash, long bytes) {
        Path place = place(hash);
        try {
            return Files.isRegularFile(place) && Files.size(place) == bytes ? Optional.of(place) : Optional.empty();
        } catch (IOException e) {
            // it was removed between two looks, which is as good as not there
            return Optional.empty();
        }
    }

    private Path place(ContentHash hash) {
        return root.resolve(hash.hex().substring(0, 2)).resolve(hash.hex());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
