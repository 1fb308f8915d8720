package org.firmset.trade.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Odds that the weather lets the work of a day go on. Rain, high, low and wind are taken as independent of each other, so
 * their odds are multiplied; truly they go together a little (a rainy day is cooler, a clear night colder), so this is a guide
 * and not a promise.
 *
 * @param parts one for each condition that was set
 */
public record SiteDayOdds(List<Part> parts) {
    public SiteDayOdds {
        parts = List.copyOf(parts);
    }

    /** What a part is about. */
    public enum About {
        DRY,
        HIGH,
        LOW,
        WIND
    }

    /**
     * One condition.
     *
     * @param odds 0 to 1
     * @param known false when nothing is known of it: it is left out of account, its odds are 1
     */
    public record Part(About about, double odds, boolean known) {}

    /** The odds of a single day. */
    public static SiteDayOdds on(WeatherDay day, Conditions conditions) {
        List<Part> parts = new ArrayList<>();
        if (conditions.dry()) {
            parts.add(new Part(About.DRY, 1 - day.wetOdds(), true));
        }
        parts.addAll(otherThanDry(day, conditions));
        return new SiteDayOdds(parts);
    }

    /**
     * The odds that all of so many days in a row will do. Dry days hang together by {@link Weather#dryInARow}; temperature and
     * wind are taken as independent from day to day, which makes long runs look a little worse than they are.
     *
     * @param days 1 or more
     */
    public static SiteDayOdds inARow(Weather weather, LocalDate first, int days, Conditions conditions) {
        List<Part> parts = new ArrayList<>();
        if (conditions.dry()) {
            parts.add(new Part(About.DRY, weather.dryInARow(first, days), true));
        }
        for (int day = 0; day < days; day++) {
            parts.addAll(otherThanDry(weather.on(first.plusDays(day)), conditions));
        }
        return new SiteDayOdds(parts);
    }

    /** All parts multiplied. */
    public double odds() {
        return parts.stream().mapToDouble(Part::odds).reduce(1, (a, b) -> a * b);
    }

    private static List<Part> otherThanDry(WeatherDay day, Conditions conditions) {
        List<Part> parts = new ArrayList<>();
        double over = conditions.highOverCelsius();
        double under = conditions.highUnderCelsius();
        if (Double.isFinite(over) || Double.isFinite(under)) {
            parts.add(new Part(
                    About.HIGH, Math.max(0, day.high().under(under) - day.high().under(over)), true));
        }
        if (Double.isFinite(conditions.lowOverCelsius())) {
            parts.add(new Part(About.LOW, 1 - day.low().under(conditions.lowOverCelsius()), true));
        }
        if (Double.isFinite(conditions.windUnderMetresPerSecond())) {
            OptionalDouble odds = day.windUnder(conditions.windUnderMetresPerSecond());
            parts.add(new Part(About.WIND, odds.orElse(1), odds.isPresent()));
        }
        return parts;
    }
}
