package org.firmset.trade.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;

class SiteHoursTest {
    private static final SiteHours HOURS =
            new SiteHours(Duration.ofMinutes(45), Duration.ofMinutes(60), Duration.ofMinutes(30), Duration.ofHours(10));

    @Test
    void a_long_day_is_cut_to_the_own_limit_before_set_up_meals_and_pack_up_are_taken_off() {
        assertThat(HOURS.usable(new Light.Always()))
                .isEqualTo(Duration.ofHours(10).minusMinutes(135));
    }

    @Test
    void a_short_day_is_all_the_light_there_is_less_the_same() {
        ZonedDateTime morning = ZonedDateTime.of(2027, 12, 1, 7, 30, 0, 0, ZoneOffset.UTC);
        assertThat(HOURS.usable(new Light.Hours(morning, morning.plusHours(9))))
                .isEqualTo(Duration.ofMinutes(9 * 60 - 135));
    }

    @Test
    void darkness_leaves_nothing_and_never_less() {
        assertThat(HOURS.usable(new Light.Never())).isZero();
    }

    @Test
    void refuses_less_than_nothing_and_more_than_a_day() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SiteHours(Duration.ofMinutes(-1), Duration.ZERO, Duration.ZERO, Duration.ZERO))
                .withMessage("setUp [PT-1M] must be from nothing to a day");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SiteHours(Duration.ZERO, Duration.ZERO, Duration.ZERO, Duration.ofHours(25)))
                .withMessage("ownLimit [PT25H] must be from nothing to a day");
    }
}
