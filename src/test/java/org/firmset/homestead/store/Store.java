package org.firmset.homestead.store;

import jakarta.persistence.EntityManagerFactory;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.hibernate.SessionFactory;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcClientAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcTemplateAutoConfiguration;
import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A store on a real database, with the program's own settings and nothing else of the program. */
public final class Store implements AutoCloseable {
    public static final Instant NOW = Instant.parse("2027-04-03T10:15:30.123456Z");

    private final ConfigurableApplicationContext context;

    private Store(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /**
     * @param environment what the owner of the program would set: FIRMSET_HOME and the like
     * @param more the parts of another store beside that of homesteads
     */
    public static Store open(Map<String, Object> environment, Class<?>... more) {
        return new Store(new SpringApplicationBuilder(Parts.class)
                .sources(more)
                .web(WebApplicationType.NONE)
                .properties("spring.jpa.properties.hibernate.generate_statistics=true")
                .properties(environment)
                .run());
    }

    Homesteads homesteads() {
        return bean(Homesteads.class);
    }

    public <T> T bean(Class<T> type) {
        return context.getBean(type);
    }

    /** The rows of every table. */
    public Map<String, Long> rowCounts() {
        Map<String, Long> counts = new TreeMap<>();
        List<String> tables = sql().sql(
                        "select table_name from information_schema.tables where table_schema = 'public'")
                .query((row, number) -> row.getString(1))
                .list();
        tables.forEach(table -> counts.put(
                table,
                sql().sql("select count(*) from \"" + table + "\"")
                        .query(Long.class)
                        .single()));
        return counts;
    }

    List<UUID> idsOf(String table, UUID homestead) {
        return sql().sql("select id from " + table + " where homestead_id = ? order by position")
                .param(homestead)
                .query((row, number) -> row.getObject(1, UUID.class))
                .list();
    }

    public long statementsDuring(Runnable work) {
        var statistics = context.getBean(EntityManagerFactory.class)
                .unwrap(SessionFactory.class)
                .getStatistics();
        statistics.clear();
        work.run();
        return statistics.getPrepareStatementCount();
    }

    public JdbcClient sql() {
        return context.getBean(JdbcClient.class);
    }

    @Override
    public void close() {
        context.close();
    }

    @ImportAutoConfiguration({
        DataSourceAutoConfiguration.class,
        FlywayAutoConfiguration.class,
        HibernateJpaAutoConfiguration.class,
        JdbcTemplateAutoConfiguration.class,
        JdbcClientAutoConfiguration.class,
        TransactionAutoConfiguration.class
    })
    @EntityScan(basePackageClasses = Homesteads.class)
    @Import(Homesteads.class)
    static class Parts {
        /** Stands still, so that a change cannot be told by its time. */
        @Bean
        Clock clock() {
            return Clock.fixed(NOW.plusNanos(789), ZoneOffset.UTC);
        }
    }
}
