package org.firmset.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.stream.Stream;
import org.firmset.homestead.store.Homesteads;
import org.firmset.spend.store.ReceiptBook;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;

/** The stores on an H2 database in a file of its own, which is gone when this is closed. */
record BenchDatabase(Path folder, ConfigurableApplicationContext parts) implements AutoCloseable {
    /** @param options added to the address of the database */
    static BenchDatabase open(String options) {
        Path folder = temporary();
        String url = "jdbc:h2:file:" + folder.resolve("bench")
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH" + options;
        return new BenchDatabase(
                folder,
                new SpringApplicationBuilder(Parts.class)
                        .web(WebApplicationType.NONE)
                        .run("--FIRMSET_HOME=" + folder, "--FIRMSET_DB_URL=" + url));
    }

    Homesteads homesteads() {
        return parts.getBean(Homesteads.class);
    }

    ReceiptBook book() {
        return parts.getBean(ReceiptBook.class);
    }

    private static Path temporary() {
        try {
            return Files.createTempDirectory("firmset-bench");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        parts.close();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The stores without pages and planner. No component, or the program itself would find it. */
    @ImportAutoConfiguration({
        DataSourceAutoConfiguration.class,
        FlywayAutoConfiguration.class,
        HibernateJpaAutoConfiguration.class,
        TransactionAutoConfiguration.class
    })
    @EntityScan({"org.firmset.homestead.store", "org.firmset.spend.store"})
    @ComponentScan({"org.firmset.homestead.store", "org.firmset.spend.store"})
    static class Parts {
        @Bean
        Clock clock() {
            return Clock.systemDefaultZone();
        }
    }
}
