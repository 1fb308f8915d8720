package org.firmset.season.day;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.season.words.WordTable;
import org.firmset.trade.climate.Light;
import org.firmset.trade.climate.SiteDayOdds;
import org.firmset.trade.climate.WeatherDay;

/** Says in plain words how light it is on a date and what the weather may be, for page and terminal alike. */
public final class DayWords {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final String NOT_KNOWN = "not known";

    private final UnitSystem units;

    public DayWords(UnitSystem units) {
        this.units = units;
    }

    public WordTable light(DayOutlook day) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Sunrise to sunset", span(day.sun())));
        rows.add(List.of("First to last light to work by", span(day.civil())));
        boolean dark = day.usable().clock().isZero();
        rows.add(List.of(
                "Work may begin",
                dark ? "not in daylight" : TIME.format(day.usable().from())));
        rows.add(List.of("Left for work, without meals", hours(day.usable().usable())));
        return new WordTable("Light", List.of("Light", "When, how long"), rows);
    }

    private static String span(Light light) {
        return switch (light) {
            case Light.Always always -> "light all day and night";
            case Light.Never never -> "dark all day";
            case Light.Hours hours ->
                "%s to %s (%s)".formatted(time(hours.from()), time(hours.to()), hours(hours.length()));
        };
    }

    private static String time(ZonedDateTime time) {
        return TIME.format(time);
    }

    public WordTable weather(DayOutlook day) {
        List<List<String>> rows = new ArrayList<>();
        if (day.weatherOrNull() == null) {
            rows.add(List.of("Climate", "not known; write it on Place and kit"));
        } else {
            WeatherDay weather = day.weatherOrNull();
            rows.add(List.of("Taken from", weather.forecast() ? "the forecast" : "the usual weather of the date"));
            rows.add(List.of("Highest", celsius(weather.high().mean())));
            rows.add(List.of("Lowest", celsius(weather.low().mean())));
            rows.add(List.of("Odds of a dry day", percent(1 - weather.wetOdds())));
            rows.add(List.of("Odds of frost", percent(weather.frostOdds())));
            Double wind = weather.windMetresPerSecond();
            rows.add(List.of("Wind", wind == null ? NOT_KNOWN : Units.show(Speed.ofMetresPerSecond(wind), units)));
            rows.add(List.of("Full sun on the panels, in mean", sunHours(day.meanSunHours())));
            rows.add(List.of(
                    "On a poor day (%d in 100 have less)".formatted(day.poorPercent()), sunHours(day.poorSunHours())));
        }
        return new WordTable("Weather", List.of("Weather", "How it may be"), rows);
    }

    private String celsius(double celsius) {
        return Units.show(Temperature.ofCelsius(rounded(celsius).doubleValue()), units);
    }

    /** Odds of stages, by what they ask of the weather. */
    public WordTable odds(DayOutlook day) {
        return new WordTable(
                "Odds that the weather lets a stage go on",
                List.of("Stage", "Odds", "Dry", "Warm or cool enough", "Night", "Wind", "Asked for"),
                day.odds().stream().map(DayWords::row).toList());
    }

    private static List<String> row(DayOutlook.StageDay stage) {
        Integer least = stage.leastPercent();
        String asked = least == null ? "any" : least + " %" + (stage.suffices() ? "" : ", too low");
        return List.of(
                stage.stage(),
                percent(stage.odds().odds()),
                part(stage, SiteDayOdds.About.DRY),
                part(stage, SiteDayOdds.About.HIGH),
                part(stage, SiteDayOdds.About.LOW),
                part(stage, SiteDayOdds.About.WIND),
                asked);
    }

    private static String part(DayOutlook.StageDay stage, SiteDayOdds.About about) {
        return stage.odds().parts().stream()
                .filter(p -> p.about() == about)
                .findFirst()
                .map(p -> p.known() ? percent(p.odds()) : NOT_KNOWN)
                .orElse("-");
    }

    /** 0.843 is "84 %"; what is nearly sure or nearly never says so. */
    public static String percent(double odds) {
        long percent = Math.round(odds * 100);
        if (percent == 100 && odds < 1) {
            return "over 99 %";
        }
        return percent == 0 && odds > 0 ? "under 1 %" : percent + " %";
    }

    /** "4.3 h". */
    public static String sunHours(double hours) {
        return rounded(hours).toPlainString() + " h";
    }

    /** "8 h 30 min". */
    public static String hours(Duration duration) {
        long minutes = duration.toMinutes();
        return minutes % 60 == 0 ? minutes / 60 + " h" : "%d h %d min".formatted(minutes / 60, minutes % 60);
    }

    private static BigDecimal rounded(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
    }
}
