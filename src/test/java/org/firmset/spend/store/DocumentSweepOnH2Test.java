package org.firmset.spend.store;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;

/** The database file a new owner gets, in a folder of its own. */
class DocumentSweepOnH2Test extends DocumentSweepContract {
    @TempDir
    private static Path home;

    @Override
    Map<String, Object> environment() {
        return Map.of("FIRMSET_HOME", home.toString());
    }
}
