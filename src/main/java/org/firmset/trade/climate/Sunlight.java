package org.firmset.trade.climate;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.SunPosition;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Sunrise, sunset, civil twilight and the sun's place in the sky, on a flat horizon at sea level. Times are good to about a
 * minute between the polar circles (checks DL-02 to DL-05), the sun's place to 0.02 degrees (DL-06). The only class that
 * knows the astronomy library.
 */
public final class Sunlight {
    private static final Duration HALF_DAY = Duration.ofHours(12);

    private Sunlight() {}

    /** From sunrise to sunset: the sun's upper edge on the horizon, 90 degrees 50 minutes from straight up (DL-01). */
    public static Light sun(Coordinates place, LocalDate date) {
        return around(noon(place, date), place, SunTimes.Twilight.VISUAL);
    }

    /**
     * From first to last light to work by: civil twilight, the sun's centre 6 degrees under the horizon (DL-01). It includes
     * the day.
     */
    public static Light civil(Coordinates place, LocalDate date) {
        return around(noon(place, date), place, SunTimes.Twilight.CIVIL);
    }

    /** When the sun stands highest on a date; on the pole, where it hardly climbs, this says little. */
    public static ZonedDateTime noon(Coordinates place, LocalDate date) {
        ZonedDateTime midnight = date.atStartOfDay(place.zone());
        SunTimes times = SunTimes.compute()
                .at(place.latitudeDegrees(), place.longitudeDegrees())
                .on(midnight)
                .execute();
        return Objects.requireNonNull(times.getNoon(), "there is a noon within every day");
    }

    /** Where the sun stands at a moment. */
    public static SkyPoint place(Coordinates place, ZonedDateTime when) {
        SunPosition position = SunPosition.compute()
                .at(place.latitudeDegrees(), place.longitudeDegrees())
                .on(when)
                .execute();
        return new SkyPoint(position.getAzimuth(), position.getAltitude());
    }

    private static Light around(ZonedDateTime noon, Coordinates place, SunTimes.Twilight twilight) {
        SunTimes.Parameters search = SunTimes.compute()
                .at(place.latitudeDegrees(), place.longitudeDegrees())
                .twilight(twilight)
                .on(noon)
                .limit(HALF_DAY);
        SunTimes after = search.forward().execute();
        SunTimes before = search.reverse().execute();
        @Nullable ZonedDateTime rise = before.getRise();
        @Nullable ZonedDateTime set = after.getSet();
        if (rise == null && set == null) {
            boolean up = place(place, noon).elevationDegrees() > twilight.getAngle();
            return up ? new Light.Always() : new Light.Never();
        }
        // on the first and last day without a night only one of them falls within half a day of noon
        return new Light.Hours(rise == null ? noon.minus(HALF_DAY) : rise, set == null ? noon.plus(HALF_DAY) : set);
    }
}
