package org.firmset.season;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;

/** The embedded database, as a file. */
class SeasonsOnH2Test extends SeasonsContract {
    @TempDir
    private static Path folder;

    @Override
    Map<String, Object> environment() {
        return Map.of("FIRMSET_HOME", folder, "FIRMSET_PLANNER_PROOF", 1);
    }
}
