package org.firmset.spend.store;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.spend.ContentHash;
import org.firmset.spend.DocumentCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How files lie in the data folder. */
class DocumentsTest {
    @TempDir
    private Path root;

    private static final byte[] PAPER = "%PDF-1.7 and more".getBytes(US_ASCII);

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(Files::isRegularFile).map(root::relativize).toList();
        }
    }

    private DocumentFolder.Draft kept(byte[] bytes) throws IOException {
        DocumentFolder folder = new DocumentFolder(root);
        DocumentFolder.Draft draft = folder.write(new ByteArrayInputStream(bytes));
        folder.keep(draft, Instant.now());
        Files.deleteIfExists(draft.file());
        return draft;
    }

    @Test
    void the_same_bytes_twice_are_one_file_under_their_hash() throws IOException {
        String hex = ContentHash.of(PAPER).hex();
        assertThat(kept(PAPER).hash().hex()).isEqualTo(hex);
        kept(PAPER);
        assertThat(files()).containsExactly(Path.of(hex.substring(0, 2), hex));
        assertThat(root.resolve(hex.substring(0, 2)).resolve(hex)).hasBinaryContent(PAPER);
    }

    @Test
    void a_file_that_was_cut_short_counts_as_missing_and_is_made_good_when_it_is_handed_in_again() throws IOException {
        DocumentFolder folder = new DocumentFolder(root);
        DocumentFolder.Draft draft = kept(PAPER);
        Path file = folder.find(draft.hash(), draft.bytes()).orElseThrow();
        Files.write(file, new byte[] {1, 2});
        assertThat(folder.find(draft.hash(), draft.bytes())).isEmpty();
        kept(PAPER);
        assertThat(folder.find(draft.hash(), draft.bytes())).contains(file);
        assertThat(file).hasBinaryContent(PAPER);
    }

    @Test
    void of_an_endless_file_little_more_than_the_limit_is_read() throws IOException {
        Endless endless = new Endless();
        DocumentFolder.Draft draft = new DocumentFolder(root).write(endless);
        assertThat(draft.bytes()).isGreaterThan(DocumentCheck.MOST_BYTES);
        assertThat(endless.read).isLessThan(DocumentCheck.MOST_BYTES + (1 << 18));
        assertThat(DocumentCheck.of("film.jpg", draft.start(), draft.bytes(), draft.hash()))
                .isInstanceOf(DocumentCheck.Refused.class);
    }

    @Test
    void an_upload_that_breaks_off_leaves_nothing() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the line is dead");
            }
        };
        assertThatThrownBy(() -> new DocumentFolder(root).write(broken)).hasMessage("the line is dead");
        assertThat(root).isEmptyDirectory();
    }

    private static final class Endless extends InputStream {
        private long read;

        @Override
        public int read() {
            read++;
            return 0xFF;
        }
    }
}
