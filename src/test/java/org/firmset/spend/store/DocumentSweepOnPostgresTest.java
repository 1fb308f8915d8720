package org.firmset.spend.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.firmset.OnePostgres;
import org.junit.jupiter.api.io.TempDir;

/** A database of its own on a PostgreSQL server. */
class DocumentSweepOnPostgresTest extends DocumentSweepContract {
    @TempDir
    private static Path home;

    @Override
    Map<String, Object> environment() throws IOException {
        Map<String, Object> environment = new HashMap<>(OnePostgres.database());
        environment.put("FIRMSET_HOME", home.toString());
        return environment;
    }
}
