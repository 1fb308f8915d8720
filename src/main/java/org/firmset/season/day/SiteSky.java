package org.firmset.season.day;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.firmset.homestead.DayRoutine;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Place;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.SkyRecords;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Horizon;
import org.firmset.trade.climate.Light;
import org.firmset.trade.climate.Sunlight;
import org.firmset.trade.climate.Weather;
import org.firmset.trade.climate.WeatherDay;
import org.firmset.trade.climate.WetDryChain;
import org.firmset.trade.power.Panels;
import org.firmset.trade.power.SunCurve;
import org.jspecify.annotations.Nullable;

/**
 * Light, weather and sun of a homestead's dates. What was reckoned is kept, so ask one sky for a whole season. Thread-safe.
 */
public final class SiteSky {
    /** The battery is as warm as in a room where nothing is known of the weather. */
    private static final double UNKNOWN_CELSIUS = 20;

    /** Of cells at 800 W/m2; without meaning here, since heat is in the losses. */
    private static final double NOMINAL_CELL_CELSIUS = 45;

    private final Coordinates place;
    private final Horizon horizon;
    private final @Nullable Weather weather;
    private final DayRoutine routine;
    private final SunCurve.Site site;
    private final @Nullable Integer poorDayPercent;
    private final Map<LocalDate, Light> civil = new ConcurrentHashMap<>();
    private final Map<CurveOf, SunCurve> curves = new ConcurrentHashMap<>();

    /** @param percent of days that have less sun; 0 for the mean */
    private record CurveOf(LocalDate date, int percent, int stepMinutes) {}

    private SiteSky(Homestead homestead) {
        Place written = homestead.place();
        place = SkyRecords.coordinates(written);
        horizon = SkyRecords.horizon(written);
        weather = SkyRecords.climate(written)
                .map(c -> new Weather(c, WetDryChain.USUAL_PERSISTENCE, SkyRecords.forecast(written)))
                .orElse(null);
        routine = homestead.openDates().day();
        @Nullable PowerKit power = homestead.power();
        site = new SunCurve.Site(place, horizon, panels(power));
        poorDayPercent = power == null ? null : power.poorDayPercent();
    }

    public static SiteSky of(Homestead homestead) {
        return new SiteSky(homestead);
    }

    /** Sun hours are those on the panels, so tilt and direction only shape the day. */
    private Panels panels(@Nullable PowerKit power) {
        double latitude = place.latitudeDegrees();
        @Nullable BigDecimal tilt = power == null ? null : power.panelTilt();
        @Nullable BigDecimal direction = power == null ? null : power.panelDirection();
        double toEquator = latitude < 0 ? 0 : 180;
        return new Panels(
                power == null ? 0 : power.panels().value().doubleValue(),
                tilt == null ? Math.abs(latitude) : tilt.doubleValue(),
                direction == null ? toEquator : direction.doubleValue(),
                power == null ? 0 : 100 - power.yieldPercent(),
                0,
                NOMINAL_CELL_CELSIUS,
                Panels.SunKnown.ON_PANELS);
    }

    public Coordinates place() {
        return place;
    }

    public Horizon horizon() {
        return horizon;
    }

    /** Empty when nothing is known of the climate. */
    public Optional<Weather> weather() {
        return Optional.ofNullable(weather);
    }

    public Optional<WeatherDay> weather(LocalDate date) {
        return weather().map(w -> w.on(date));
    }

    /** From sunrise to sunset. */
    public Light sun(LocalDate date) {
        return Sunlight.sun(place, date);
    }

    /** From first to last light to work by. */
    public Light civil(LocalDate date) {
        return civil.computeIfAbsent(date, d -> Sunlight.civil(place, d));
    }

    /** From the later of first light and the earliest hour to the last light, less meals. */
    public UsableLight usable(LocalDate date) {
        return UsableLight.of(civil(date), routine);
    }

    /** How many days in a hundred may have less sun than is counted on; empty when the mean is. */
    public Optional<Integer> poorDayPercent() {
        return Optional.ofNullable(poorDayPercent);
    }

    /** Hours of full sun that a plan counts on: the mean, or those of a poor day as the homestead says. */
    public double sunHours(LocalDate date) {
        return poorDayPercent == null ? meanSunHours(date) : poorSunHours(date, poorDayPercent);
    }

    /** 0 when nothing is known of the climate. */
    public double meanSunHours(LocalDate date) {
        return weather(date).map(WeatherDay::sunHours).orElse(0.0);
    }

    /** @param percent of the days that have less, 1 to 99 */
    public double poorSunHours(LocalDate date, int percent) {
        return weather(date).map(w -> w.poorSunHours(percent)).orElse(0.0);
    }

    /** What a watt of panels gives through the day, of the sun that a plan counts on. @param stepMinutes 15, 30 or 60 */
    public SunCurve curve(LocalDate date, int stepMinutes) {
        return curve(new CurveOf(date, poorDayPercent == null ? 0 : poorDayPercent, stepMinutes));
    }

    /** The same with the sun that so many days in a hundred fall short of. @param percent 1 to 99 */
    public SunCurve poorCurve(LocalDate date, int percent, int stepMinutes) {
        return curve(new CurveOf(date, percent, stepMinutes));
    }

    private SunCurve curve(CurveOf of) {
        return curves.computeIfAbsent(of, this::reckoned);
    }

    private SunCurve reckoned(CurveOf of) {
        double hours = of.percent() == 0 ? meanSunHours(of.date()) : poorSunHours(of.date(), of.percent());
        return hours > 0
                ? SunCurve.of(site, new SunCurve.Day(of.date(), hours, airCelsius(of.date())), of.stepMinutes())
                : SunCurve.dark(of.stepMinutes());
    }

    /** The usual mean of the air of the date, which a battery outdoors follows; 20 when nothing is known of the climate. */
    public double airCelsius(LocalDate date) {
        return weather(date)
                .map(w -> (w.high().mean() + w.low().mean()) / 2)
                .map(c -> Math.clamp(c, -60, 60))
                .orElse(UNKNOWN_CELSIUS);
    }
}
