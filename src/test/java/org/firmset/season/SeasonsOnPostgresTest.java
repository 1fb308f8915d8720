package org.firmset.season;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A PostgreSQL server of its own. */
class SeasonsOnPostgresTest extends SeasonsContract {
    private @Nullable EmbeddedPostgres server;

    @Override
    Map<String, Object> environment() throws IOException {
        if (server == null) {
            server = EmbeddedPostgres.start();
        }
        return Map.of(
                "FIRMSET_DB_URL",
                server.getJdbcUrl("postgres", "postgres"),
                "FIRMSET_DB_USER",
                "postgres",
                "FIRMSET_DB_PASSWORD",
                "postgres",
                "FIRMSET_PLANNER_PROOF",
                1);
    }

    @Override
    void stopDatabase() throws IOException {
        if (server != null) {
            server.close();
        }
    }
}
