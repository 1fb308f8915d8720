package org.firmset.trade.climate;

import java.time.Duration;
import java.time.ZonedDateTime;

/**
 * How long it is light around the noon of a date. Near the poles the sun may not set or not rise for weeks: that is an
 * answer, not a fault.
 */
public sealed interface Light {
    /** 24 hours at the most. */
    Duration length();

    /** @param to the first moment of darkness, within 12 hours of noon; past midnight in some far northern nights */
    record Hours(ZonedDateTime from, ZonedDateTime to) implements Light {
        @Override
        public Duration length() {
            return Duration.between(from, to);
        }
    }

    /** Light all day and night. */
    record Always() implements Light {
        @Override
        public Duration length() {
            return Duration.ofDays(1);
        }
    }

    /** Dark all day. */
    record Never() implements Light {
        @Override
        public Duration length() {
            return Duration.ZERO;
        }
    }
}
