package org.firmset.season.day;

import java.time.Duration;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.firmset.homestead.Homestead;
import org.firmset.season.words.WordTable;
import org.firmset.trade.climate.WeatherDay;

/**
 * What the middle of a month is usually like.
 *
 * @param dryOdds of a day, 0 to 1
 * @param frostOdds of a night, 0 to 1
 * @param daylight from first to last light to work by
 * @param sunHours of full sun a day, in mean
 */
public record MonthOutlook(Month month, double dryOdds, double frostOdds, Duration daylight, double sunHours) {
    private static final int MIDDLE = 15;

    /** All twelve; none when nothing is known of the climate. */
    public static List<MonthOutlook> of(Homestead homestead, int year) {
        // a forecast is about some days, not about the month
        SiteSky sky = SiteSky.of(homestead.withPlace(homestead.place().withForecast(List.of())));
        return Arrays.stream(Month.values())
                .map(m -> LocalDate.of(year, m, MIDDLE))
                .flatMap(d -> sky.weather(d).map(w -> of(d, w, sky)).stream())
                .toList();
    }

    private static MonthOutlook of(LocalDate date, WeatherDay weather, SiteSky sky) {
        return new MonthOutlook(
                date.getMonth(),
                1 - weather.wetOdds(),
                weather.frostOdds(),
                sky.civil(date).length(),
                weather.sunHours());
    }

    /** "Jan". */
    public String shortName() {
        return month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** In words, for those who do not see the drawing. */
    public static WordTable table(List<MonthOutlook> months) {
        return new WordTable(
                "The twelve months in figures",
                List.of("Month", "Dry day", "Night of frost", "Light to work by", "Full sun a day"),
                months.stream()
                        .map(m -> List.of(
                                m.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                                DayWords.percent(m.dryOdds()),
                                DayWords.percent(m.frostOdds()),
                                DayWords.hours(m.daylight()),
                                DayWords.sunHours(m.sunHours())))
                        .toList());
    }
}
