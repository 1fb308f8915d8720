package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.firmset.Firmset;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.store.Changes;
import org.firmset.homestead.store.Homesteads;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The program ends while it still looks for a better plan and a page follows it. */
class SeasonsEndTest {
    private static final Duration SOON = Duration.ofSeconds(8);

    @TempDir
    private static Path folder;

    private final List<String> troubles = new CopyOnWriteArrayList<>();

    private static void await(BooleanSupplier there) {
        Instant last = Instant.now().plusSeconds(90);
        while (!there.getAsBoolean()) {
            assertThat(Instant.now()).isBefore(last);
            LockSupport.parkNanos(5_000_000);
        }
    }

    @Test
    void an_ending_program_ends_its_look_first_and_says_nothing_frightening() {
        ConfigurableApplicationContext program = new SpringApplicationBuilder(Firmset.class)
                .run(
                        "--server.port=0",
                        "--firmset.planner.plans=2000000",
                        "--firmset.planner.proof=60",
                        "--FIRMSET_HOME=" + folder);
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        Troubles appender = new Troubles();
        appender.start();
        root.addAppender(appender);
        try {
            endWhileLooking(program);
        } finally {
            root.detachAppender(appender);
        }
        assertThat(troubles).isEmpty();
    }

    private void endWhileLooking(ConfigurableApplicationContext program) {
        Seasons seasons = program.getBean(Seasons.class);
        Homesteads homesteads = program.getBean(Homesteads.class);
        Changes.Change added =
                program.getBean(Changes.class).add(SeedHomesteads.demo(LocalDate.now(ZoneId.systemDefault())));
        UUID place = ((Changes.Change.Stored) added).kept().id();
        AtomicBoolean ended = new AtomicBoolean();
        AtomicInteger late = new AtomicInteger();
        // as a page does: whatever it is told, it reads the homestead again
        seasons.listen(place, state -> {
            late.addAndGet(ended.get() ? 1 : 0);
            homesteads.find(place);
        });
        await(() -> seasons.state(place) instanceof SeasonState.Planned planned && !planned.last());
        Instant begin = Instant.now();
        program.close();
        ended.set(true);
        assertThat(Duration.between(begin, Instant.now())).isLessThan(SOON);
        // what went on after the end would come to the closed database by then
        LockSupport.parkNanos(Duration.ofSeconds(2).toNanos());
        assertThat(late).hasValue(0);
    }

    private final class Troubles extends AppenderBase<ILoggingEvent> {
        @Override
        protected void append(ILoggingEvent event) {
            if (event.getLevel().isGreaterOrEqual(Level.WARN)) {
                troubles.add(event.getLevel() + " " + event.getLoggerName() + " " + event.getFormattedMessage());
            }
        }
    }
}
