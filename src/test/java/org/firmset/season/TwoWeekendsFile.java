package org.firmset.season;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;

/** The small homestead that is planned by hand in docs/two-weekends.md. */
public final class TwoWeekendsFile {
    private TwoWeekendsFile() {}

    public static Homestead read() {
        try (InputStream in = Files.newInputStream(Path.of("seed-data/two-weekends.json"))) {
            return ((Reading.Accepted) HomesteadFile.read(in)).homestead();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
