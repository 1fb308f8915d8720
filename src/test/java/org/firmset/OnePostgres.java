package org.firmset;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One PostgreSQL server for all tests of a run, as starting one takes seconds; it ends with the run. */
public final class OnePostgres {
    private static @Nullable EmbeddedPostgres server;
    private static int databases;

    private OnePostgres() {}

    /** What the owner of the program would set to use a new, empty database. */
    public static synchronized Map<String, Object> database() throws IOException {
        if (server == null) {
            server = EmbeddedPostgres.start();
        }
        String name = "firmset" + databases++;
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return Map.of(
                "FIRMSET_DB_URL", server.getJdbcUrl("postgres", name),
                "FIRMSET_DB_USER", "postgres",
                "FIRMSET_DB_PASSWORD", "postgres");
    }
}
