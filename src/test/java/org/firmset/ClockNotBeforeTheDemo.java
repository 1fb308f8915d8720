package org.firmset;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;

/** Pages are tried with receipts of the autumn of 2026, which nobody can have entered before: no test runs earlier. */
@Configuration(proxyBeanMethods = false)
class ClockNotBeforeTheDemo {
    private static final Instant AFTER_THE_RECEIPTS = Instant.parse("2026-11-26T12:00:00Z");

    /** One for all programs of a test run: those that share a database must agree on what came first. */
    private static final Clock CLOCK = clock();

    private static Clock clock() {
        Clock clock = Clock.systemDefaultZone();
        Duration early = Duration.between(clock.instant(), AFTER_THE_RECEIPTS);
        return early.isPositive() ? Clock.offset(clock, early) : clock;
    }

    @Bean
    @Primary
    Clock clockOfTests() {
        return CLOCK;
    }
}
