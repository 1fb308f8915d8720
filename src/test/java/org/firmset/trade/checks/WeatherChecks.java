package org.firmset.trade.checks;

import java.time.Duration;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Light;
import org.firmset.trade.climate.MonthlyCurve;
import org.firmset.trade.climate.MonthlyValues;
import org.firmset.trade.climate.Sunlight;
import org.firmset.trade.climate.WetDryChain;

/** When it is light, and how the weather of a place spreads over its days. */
final class WeatherChecks {
    private static final Coordinates GOLDEN = new Coordinates(39.7425, -105.1786, ZoneOffset.ofHours(-7));
    private static final Coordinates LONDON = new Coordinates(51.5, -0.1333, ZoneOffset.UTC);
    private static final Coordinates BOSTON = new Coordinates(42.3, -71.1, ZoneOffset.ofHours(-5));
    private static final int YEAR = 2027;

    private WeatherChecks() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>(light());
        rows.addAll(chains());
        rows.addAll(normals());
        return rows;
    }

    private static List<Row> light() {
        LocalDate january = LocalDate.of(2015, 1, 1);
        LocalDate august = LocalDate.of(2015, 8, 2);
        LocalDate december = LocalDate.of(2015, 12, 1);
        LocalDate february = LocalDate.of(2014, 2, 12);
        ZonedDateTime moment = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));
        return List.of(
                Row.of("DL-01", "Where the sun stands at sunrise and first light", "USNO/NOAA definition", "verified")
                        .value(
                                "sunrise, degrees from straight up",
                                90.833,
                                0.05,
                                () -> zenith(sun(GOLDEN, january).from()))
                        .value(
                                "first light, degrees from straight up",
                                96,
                                0.05,
                                () -> zenith(civil(GOLDEN, january).from())),
                Row.of("DL-02", "Golden CO, 1 January 2015, minutes after midnight", "USNO", "verified")
                        .value(
                                "sunrise 07:22",
                                clock(7, 22),
                                1,
                                () -> minutes(sun(GOLDEN, january).from()))
                        .value(
                                "sunset 16:47",
                                clock(16, 47),
                                1,
                                () -> minutes(sun(GOLDEN, january).to()))
                        .value("noon 12:04", clock(12, 4), 1, () -> minutes(Sunlight.noon(GOLDEN, january))),
                Row.of("DL-03", "Golden CO, 2 August 2015, minutes after midnight", "USNO", "verified")
                        .value(
                                "sunrise 05:00",
                                clock(5, 0),
                                1,
                                () -> minutes(sun(GOLDEN, august).from()))
                        .value(
                                "sunset 19:13",
                                clock(19, 13),
                                1,
                                () -> minutes(sun(GOLDEN, august).to()))
                        .value("noon 12:07", clock(12, 7), 1, () -> minutes(Sunlight.noon(GOLDEN, august))),
                Row.of("DL-04", "London, 1 December 2015, minutes after midnight", "a public almanac page", "verified")
                        .value(
                                "sunrise 07:43",
                                clock(7, 43),
                                1,
                                () -> minutes(sun(LONDON, december).from()))
                        .value(
                                "sunset 15:55",
                                clock(15, 55),
                                1,
                                () -> minutes(sun(LONDON, december).to()))
                        .value(
                                "first light 07:04",
                                clock(7, 4),
                                1,
                                () -> minutes(civil(LONDON, december).from())),
                Row.of("DL-05", "Boston, 12 February 2014, minutes after midnight", "USNO one-day page", "verified")
                        .value(
                                "sunrise 06:45",
                                clock(6, 45),
                                1,
                                () -> minutes(sun(BOSTON, february).from()))
                        .value(
                                "first light 06:16",
                                clock(6, 16),
                                1,
                                () -> minutes(civil(BOSTON, february).from())),
                Row.of("DL-06", "The sun over Golden CO, 17 October 2003, 12:30:30", "NREL/TP-560-34302", "verified")
                        .value("degrees from straight up", 50.11162, 0.02, () -> zenith(moment))
                        .value(
                                "azimuth, degrees",
                                194.34024,
                                0.02,
                                () -> Sunlight.place(GOLDEN, moment).azimuthDegrees()));
    }

    private static Light.Hours sun(Coordinates place, LocalDate date) {
        return (Light.Hours) Sunlight.sun(place, date);
    }

    private static Light.Hours civil(Coordinates place, LocalDate date) {
        return (Light.Hours) Sunlight.civil(place, date);
    }

    private static double clock(int hour, int minute) {
        return hour * 60.0 + minute;
    }

    private static double minutes(ZonedDateTime time) {
        ZonedDateTime midnight = time.toLocalDate().atStartOfDay(time.getZone());
        return Duration.between(midnight, time).toSeconds() / 60.0;
    }

    private static double zenith(ZonedDateTime time) {
        return 90 - Sunlight.place(GOLDEN, time).elevationDegrees();
    }

    private static List<Row> chains() {
        WetDryChain telAviv = new WetDryChain(0.250, 0.662);
        WetDryChain seattle = WetDryChain.counted(633, 204, 204, 419);
        WetDryChain january = WetDryChain.counted(40, 19, 17, 47);
        return List.of(
                Row.of("WX-01", "Wet days in the long run, Tel Aviv", "Gabriel and Neumann 1962", "verified")
                        .value("share wet", 0.425, 0.001, telAviv::wetShare)
                        .value("share dry", 0.575, 0.001, () -> telAviv.dryInARow(1)),
                Row.of("WX-02", "Two days on, and runs of days", "Chapman-Kolmogorov", "memory: arithmetic")
                        .value("dry to wet in two days", 0.353, 0.0005, () -> telAviv.wetAfter(2, false))
                        .value("mean run of wet days", 2.96, 0.005, telAviv::meanWetDays)
                        .value("mean run of dry days", 4.00, 0.0005, telAviv::meanDryDays)
                        .value("correlation from day to day", 0.412, 0.0005, telAviv::persistence),
                Row.of("WX-03", "Chain counted from days, Seattle 2012 to 2015", "NOAA daily record", "verified")
                        .value("wet after dry", 0.2437, 0.00005, seattle::wetAfterDry)
                        .value("wet after wet", 0.6726, 0.00005, seattle::wetAfterWet)
                        .value("share wet", 0.4267, 0.00006, seattle::wetShare)
                        .value("the same counted, 623 of 1461 days", 623.0 / 1461, 0.001, seattle::wetShare)
                        .value(
                                "wet after wet from share and persistence",
                                0.6726,
                                0.00005,
                                () -> WetDryChain.of(seattle.wetShare(), seattle.persistence())
                                        .wetAfterWet()),
                Row.of("WX-04", "January of the same record", "NOAA daily record", "verified")
                        .value("wet after dry", 0.322, 0.0005, january::wetAfterDry)
                        .value("wet after wet", 0.734, 0.0005, january::wetAfterWet));
    }

    private static List<Row> normals() {
        MonthlyValues inches = values(0.51, 0.49, 1.28, 1.93, 2.32, 1.56, 2.16, 1.82, 1.14, 0.99, 0.98, 0.63);
        MonthlyValues highs = values(68, 71, 78, 86, 95, 104, 107, 105, 100, 89, 77, 66);
        MonthlyValues lows = values(46, 49, 55, 61, 70, 79, 85, 84, 78, 66, 54, 45);
        return List.of(
                Row.of(
                                "WX-06",
                                "Precipitation, Denver Stapleton 1971-2000, spread over days and added up",
                                "NCDC normals",
                                "verified")
                        .value("year, in", 15.81, 0.005, () -> rain(inches, 1, 12))
                        .value("May, in", 2.32, 0.005, () -> rain(inches, 5, 5))
                        .value("year, mm", 402, 0.5, () -> 25.4 * rain(inches, 1, 12)),
                Row.of(
                                "WX-08",
                                "Phoenix climate chart: means of the days of a month",
                                "NOAA normals as charted",
                                "verified: rounded chart")
                        .value("highs, July, °F", 107, 0.1, () -> mean(highs, Month.JULY))
                        .value("highs, December, °F", 66, 0.1, () -> mean(highs, Month.DECEMBER))
                        .value("highs, February, °F", 71, 0.1, () -> mean(highs, Month.FEBRUARY))
                        .value("lows, July, °F", 85, 0.1, () -> mean(lows, Month.JULY))
                        .value("lows, January, °F", 46, 0.1, () -> mean(lows, Month.JANUARY)));
    }

    private static MonthlyValues values(double... months) {
        return new MonthlyValues(IntStream.range(0, 12).mapToObj(m -> months[m]).toList());
    }

    private static double rain(MonthlyValues inches, int from, int to) {
        MonthlyValues aDay = new MonthlyValues(IntStream.rangeClosed(1, 12)
                .mapToObj(
                        m -> inches.values().get(m - 1) / YearMonth.of(YEAR, m).lengthOfMonth())
                .toList());
        return IntStream.rangeClosed(from, to)
                .mapToDouble(
                        m -> mean(aDay, Month.of(m)) * YearMonth.of(YEAR, m).lengthOfMonth())
                .sum();
    }

    private static double mean(MonthlyValues months, Month month) {
        MonthlyCurve curve = MonthlyCurve.of(months);
        YearMonth days = YearMonth.of(YEAR, month);
        return IntStream.rangeClosed(1, days.lengthOfMonth())
                .mapToDouble(d -> curve.on(days.atDay(d)))
                .average()
                .orElseThrow();
    }
}
