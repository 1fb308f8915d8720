package org.firmset.homestead.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.firmset.OnePostgres;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an earlier version kept is still there after an update, and means the same. */
class MigrationTest {
    private static final String URL = "jdbc:h2:mem:migration;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
            + "DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1";

    private static FluentConfiguration flyway() {
        return Flyway.configure().dataSource(URL, "firmset", "").locations("classpath:db/migration");
    }

    @Test
    void a_cure_that_was_kept_before_there_was_a_choice_goes_by_the_law_it_went_by() throws SQLException {
        flyway().target("2").load().migrate();
        try (Connection connection = DriverManager.getConnection(URL, "firmset", "");
                Statement statement = connection.createStatement()) {
            keepWaits(statement);
            flyway().load().migrate();
            ResultSet waits = statement.executeQuery(
                    "select key_text, cure_strength_percent, cure_method, cure_ageing from stage_wait order by key_text");
            waits.next();
            assertThat(waits.getString("key_text")).isEqualTo("cure");
            assertThat(waits.getInt("cure_strength_percent")).isEqualTo(70);
            assertThat(waits.getString("cure_method")).isEqualTo("EN_1992");
            assertThat(waits.getString("cure_ageing")).isEqualTo("EN_1992");
            waits.next();
            assertThat(waits.getString("key_text")).isEqualTo("follow");
            assertThat(waits.getString("cure_method")).isNull();
        }
    }

    @Test
    void receipts_of_all_states_stay_what_they_were_on_h2(@TempDir Path folder) throws SQLException {
        String url = "jdbc:h2:file:" + folder.resolve("kept") + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE";
        keepsStates(url, "firmset", "", "set referential_integrity false");
    }

    @Test
    void receipts_of_all_states_stay_what_they_were_on_postgresql() throws IOException, SQLException {
        Map<String, Object> database = OnePostgres.database();
        keepsStates(
                String.valueOf(database.get("FIRMSET_DB_URL")),
                String.valueOf(database.get("FIRMSET_DB_USER")),
                String.valueOf(database.get("FIRMSET_DB_PASSWORD")),
                "set session_replication_role = replica");
    }

    /** From before the day of a rest and what is paid ahead. */
    private static void keepsStates(String url, String user, String password, String alone) throws SQLException {
        FluentConfiguration flyway =
                Flyway.configure().dataSource(url, user, password).locations("classpath:db/migration");
        flyway.target("12").load().migrate();
        try (Connection connection = DriverManager.getConnection(url, user, password);
                Statement statement = connection.createStatement()) {
            // what they refer to is of no account here
            statement.execute(alone);
            for (String state : List.of("PAID", "ORDERED", "RETURNED")) {
                statement.execute(receipt(state));
            }
            flyway.target("latest").load().migrate();
            // the connection of the migration is closed by now, as the program's is after a while
            statement.execute(receipt("PAID").replace("'PAID', date", "'QUITE_NEW', date"));
            statement.execute("delete from receipt where key_text = 'QUITE_NEW'");
            ResultSet kept = statement.executeQuery("select key_text, state, rest_on from receipt order by key_text");
            for (String state : List.of("ORDERED", "PAID", "RETURNED")) {
                kept.next();
                assertThat(kept.getString("state")).isEqualTo(state).isEqualTo(kept.getString("key_text"));
                assertThat(kept.getDate("rest_on")).isNull();
            }
            statement.execute("update receipt set state = 'PAID_AHEAD', rest_on = bought_on where state = 'ORDERED'");
            assertThatThrownBy(() -> statement.execute("update receipt set state = 'LOST'"))
                    .isInstanceOf(SQLException.class);
            assertThatThrownBy(() -> statement.execute("update receipt set state = null"))
                    .isInstanceOf(SQLException.class);
            assertThatThrownBy(() -> statement.execute("update receipt set rest_on = date '2026-11-13'"))
                    .isInstanceOf(SQLException.class);
        }
    }

    private static String receipt(String state) {
        return "insert into receipt (id, homestead_id, version, key_text, bought_on, supplier, state, currency, tax,"
                + " discount, deposit) values ('" + UUID.randomUUID() + "', '" + UUID.randomUUID() + "', 1, '" + state
                + "', date '2026-11-14', 'Shop', '" + state + "', 'USD', 0, 0, "
                + (state.equals("ORDERED") ? "400" : "0") + ")";
    }

    /** The rows of two waits; what they refer to is of no account here. */
    private static void keepWaits(Statement statement) throws SQLException {
        statement.execute("set referential_integrity false");
        String some = "'" + UUID.randomUUID() + "'";
        String columns = "insert into stage_wait (id, homestead_id, key_text, position, name, kind, from_stage_id,"
                + " to_stage_id, least_days, cure_strength_percent, cure_cement) values ('";
        statement.execute(columns + UUID.randomUUID() + "', " + some + ", 'cure', 0, 'Cure', 'CURE', " + some + ", "
                + some + ", 7, 70, 'NORMAL')");
        statement.execute(columns + UUID.randomUUID() + "', " + some + ", 'follow', 1, 'Follow', 'FOLLOWS', " + some
                + ", " + some + ", 0, null, null)");
    }
}
