package org.firmset.homestead.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.Test;

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
