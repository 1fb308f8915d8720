package org.firmset;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one clock of the program: whoever needs the time is given it, so that tests can set it. */
@Configuration(proxyBeanMethods = false)
class ClockConfiguration {
    @Bean
    Clock clock() {
        return Clock.systemDefaultZone();
    }
}
