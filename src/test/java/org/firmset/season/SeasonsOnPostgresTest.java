package org.firmset.season;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.firmset.OnePostgres;
import org.jspecify.annotations.Nullable;

/** A database of its own on a PostgreSQL server. */
class SeasonsOnPostgresTest extends SeasonsContract {
    private @Nullable Map<String, Object> environment;

    @Override
    Map<String, Object> environment() throws IOException {
        if (environment == null) {
            environment = new HashMap<>(OnePostgres.database());
            environment.put("FIRMSET_PLANNER_PROOF", 1);
        }
        return environment;
    }
}
