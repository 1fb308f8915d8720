package org.firmset.trade.climate;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * When the sun itself, were the sky clear, shines on a site that hills and trees shade: its centre above the horizon of
 * its direction; without hills that is a few minutes after sunrise and before sunset. To the minute; an appearance or a shade of less than five minutes may be overlooked.
 *
 * @param spans of one date from midnight to midnight, in order
 */
public record DirectSun(List<Span> spans) {
    private static final int STEP_MINUTES = 5;

    public DirectSun {
        spans = List.copyOf(spans);
    }

    public record Span(ZonedDateTime from, ZonedDateTime to) {}

    public static DirectSun on(Coordinates place, LocalDate date, Horizon horizon) {
        ZonedDateTime midnight = date.atStartOfDay(place.zone());
        ZonedDateTime end = date.plusDays(1).atStartOfDay(place.zone());
        List<Span> spans = new ArrayList<>();
        ZonedDateTime from = midnight;
        boolean shone = shines(place, horizon, midnight);
        for (ZonedDateTime time = midnight; time.isBefore(end); time = time.plusMinutes(STEP_MINUTES)) {
            boolean shines = shines(place, horizon, time);
            if (shines != shone) {
                ZonedDateTime change = change(place, horizon, time.minusMinutes(STEP_MINUTES), shines);
                if (shines) {
                    from = change;
                } else {
                    spans.add(new Span(from, change));
                }
                shone = shines;
            }
        }
        if (shone) {
            spans.add(new Span(from, end));
        }
        return new DirectSun(spans);
    }

    /** All spans together. */
    public Duration length() {
        return spans.stream().map(s -> Duration.between(s.from(), s.to())).reduce(Duration.ZERO, Duration::plus);
    }

    private static ZonedDateTime change(Coordinates place, Horizon horizon, ZonedDateTime before, boolean shines) {
        ZonedDateTime time = before.plusMinutes(1);
        while (shines(place, horizon, time) != shines) {
            time = time.plusMinutes(1);
        }
        return time;
    }

    private static boolean shines(Coordinates place, Horizon horizon, ZonedDateTime time) {
        return horizon.shows(Sunlight.place(place, time));
    }
}
