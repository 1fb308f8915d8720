package org.firmset.trade.checks;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.firmset.measure.Dimension;
import org.firmset.measure.Temperature;
import org.firmset.measure.Units;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.climate.MonthlyValues;
import org.firmset.trade.cure.Ageing;
import org.firmset.trade.cure.Batch;
import org.firmset.trade.cure.Cement;
import org.firmset.trade.cure.ColdWeather;
import org.firmset.trade.cure.Evaporation;
import org.firmset.trade.cure.Exposure;
import org.firmset.trade.cure.HotWeather;
import org.firmset.trade.cure.MasonryCold;
import org.firmset.trade.cure.Strength;
import org.firmset.trade.cure.StrengthCurve;
import org.firmset.trade.cure.TemperatureStep;

/** Published values of strength, of weather for pours, and of the climate they are reckoned with. */
final class CureChecks {
    private static final List<TemperatureStep> TWO_DAYS = List.of(new TemperatureStep(48, 20));
    private static final List<TemperatureStep> RECORD = List.of(
            new TemperatureStep(12, 25),
            new TemperatureStep(12, 18),
            new TemperatureStep(24, 12),
            new TemperatureStep(24, 8));

    private static final MonthlyValues DENVER_HIGHS = MonthlyTemperatures.parse(
                    "43.2 47.2 53.7 60.9 70.5 82.1 88.0 86.0 77.4 66.0 51.5 44.1 degF")
            .celsius();
    private static final MonthlyValues DENVER_LOWS = MonthlyTemperatures.parse(
                    "15.2 19.1 25.4 34.2 43.8 53.0 58.7 57.4 47.3 35.9 23.5 16.4 degF")
            .celsius();

    private CureChecks() {}

    static List<Row> rows() {
        return List.of(
                euroShare(),
                aciShare(),
                daysToShare(),
                euroAge(),
                coldWait(),
                degreeHours(),
                astmFactor(),
                astmAge(),
                grout(),
                freezing(),
                evaporation(),
                evaporationByWind(),
                threshold(),
                windLimit(),
                hotWeather(),
                hotConcrete(),
                hotMasonry(),
                masonryBands(),
                winterGrout(),
                leastConcrete(),
                protection(),
                spell(),
                mixing(),
                normals(),
                coldMonths());
    }

    private static Row euroShare() {
        Row row = Row.of(
                "ST-01",
                "Share of the 28-day strength at 20 °C",
                "EN 1992-1-1 Eq. 3.2",
                "verified: formula and coefficients; numbers by arithmetic");
        double[] days = {1, 2, 3, 7, 14, 28, 56, 90};
        double[] shares = {0.342, 0.504, 0.598, 0.779, 0.902, 1.000, 1.076, 1.117};
        for (int i = 0; i < days.length; i++) {
            double age = days[i];
            row.value("normal, %.0f d".formatted(age), shares[i], 0.001, () -> StrengthCurve.EN_NORMAL.share(age));
        }
        return row.value("rapid, 3 d", 0.663, 0.001, () -> Strength.share(3, Cement.RAPID))
                .value("rapid, 7 d", 0.819, 0.001, () -> Strength.share(7, Cement.RAPID))
                .value("slow, 3 d", 0.458, 0.001, () -> Strength.share(3, Cement.SLOW))
                .value("slow, 7 d", 0.684, 0.001, () -> Strength.share(7, Cement.SLOW));
    }

    private static Row aciShare() {
        Row row = Row.of("ST-02", "Share of the 28-day strength, Type I moist cured", "ACI 209R-92 Eq. 2-1", "memory");
        double[] days = {1, 3, 7, 14, 28, 90};
        double[] shares = {0.206, 0.458, 0.704, 0.881, 1.007, 1.118};
        for (int i = 0; i < days.length; i++) {
            double age = days[i];
            row.value("%.0f d".formatted(age), shares[i], 0.001, () -> StrengthCurve.ACI_TYPE_I.share(age));
        }
        return row;
    }

    private static Row daysToShare() {
        return Row.of("ST-03", "Days to a share at 20 °C", "ST-01 and ST-02 inverted", "memory: algebra")
                .value("50 %, ACI 209R Type I, d", 3.48, 0.01, () -> StrengthCurve.ACI_TYPE_I.daysTo(0.5))
                .value("70 %, ACI 209R Type I, d", 6.91, 0.01, () -> StrengthCurve.ACI_TYPE_I.daysTo(0.7))
                .value("50 %, EN normal, d", 1.97, 0.01, () -> StrengthCurve.EN_NORMAL.daysTo(0.5))
                .value("70 %, EN normal, d", 4.75, 0.01, () -> StrengthCurve.EN_NORMAL.daysTo(0.7));
    }

    private static Row euroAge() {
        return Row.of(
                        "ST-04",
                        "Temperature-adjusted age of a day",
                        "EN 1992-1-1 B.10; CEB-FIP MC 90",
                        "verified: 4000 K and 293 K; 13.65 from memory")
                .value("5 °C", 0.478, 0.001, () -> Ageing.EN_1992.factor(5))
                .value("10 °C", 0.616, 0.001, () -> Ageing.EN_1992.factor(10))
                .value("20 °C", 0.998, 0.001, () -> Ageing.EN_1992.factor(20))
                .value("30 °C", 1.566, 0.001, () -> Ageing.EN_1992.factor(30));
    }

    private static Row coldWait() {
        LocalDate pour = LocalDate.of(2027, 5, 1);
        return Row.of("ST-05", "Days to 70 % in the cold, EN normal", "ST-03 with ST-04", "memory: arithmetic")
                .value("10 °C, d", 7.72, 0.02, () -> Strength.daysTo(0.7, Cement.NORMAL) / Strength.ageFactor(10))
                .value("5 °C, d", 9.95, 0.02, () -> Strength.daysTo(0.7, Cement.NORMAL) / Strength.ageFactor(5))
                .value("10 °C, whole d", 8, 0, () -> Strength.calendarDaysTo(0.7, Cement.NORMAL, pour, d -> 10))
                .value("5 °C, whole d", 10, 0, () -> Strength.calendarDaysTo(0.7, Cement.NORMAL, pour, d -> 5));
    }

    private static Row degreeHours() {
        return Row.of("ST-06", "Nurse-Saul temperature-time factor, °C h", "ASTM C1074 Eq. 1", "memory")
                .value("48 h at 20 °C, datum 0 °C", 960, 0, () -> Ageing.degreeHours(TWO_DAYS, 0))
                .value("48 h at 20 °C, datum -10 °C", 1440, 0, () -> Ageing.degreeHours(TWO_DAYS, -10))
                .value("record, datum 0 °C", 996, 0, () -> Ageing.degreeHours(RECORD, 0))
                .value("record, datum -10 °C", 1716, 0, () -> Ageing.degreeHours(RECORD, -10));
    }

    private static Row astmFactor() {
        return Row.of("ST-07", "Equivalent-age factor, 5000 K and 23 °C", "ASTM C1074 Eq. 2", "memory")
                .value("5 °C", 0.335, 0.001, () -> Ageing.EQUIVALENT_AGE.factor(5))
                .value("10 °C", 0.460, 0.001, () -> Ageing.EQUIVALENT_AGE.factor(10))
                .value("30 °C", 1.477, 0.001, () -> Ageing.EQUIVALENT_AGE.factor(30))
                .value("40 °C", 2.503, 0.001, () -> Ageing.EQUIVALENT_AGE.factor(40));
    }

    private static Row astmAge() {
        return Row.of("ST-08", "Equivalent age of the record of ST-06", "ASTM C1074 Eq. 2", "memory")
                .value("h", 44.66, 0.02, () -> Ageing.EQUIVALENT_AGE.equivalentHours(RECORD));
    }

    private static Row grout() {
        return Row.of(
                        "ST-09",
                        "7-day share of plain grout",
                        "Masonry Magazine, February 1994, p. 36: 0.60 to 0.70",
                        "verified")
                .value("curve for core fill", 0.65, 0.05, () -> StrengthCurve.CORE_FILL.share(7));
    }

    private static Row freezing() {
        return Row.of("ST-10", "Strength that survives one freeze", "PCA, cold-weather concreting: 500 psi", "verified")
                .value("MPa", 3.5, 0, () -> ColdWeather.FREEZING_SURVIVED_PASCALS / 1e6);
    }

    private static Row evaporation() {
        return Row.of(
                        "WL-01",
                        "Evaporation, example of the chart",
                        "NRMCA and ACI 305R; Uno, ACI Materials Journal 95-M34",
                        "verified: results; the inputs are from memory and reproduce both")
                .value("lb/ft2 an hour", 0.24, 0.005, () -> Evaporation.usRate(87, 80, 0.5, 12))
                .value("lb/ft2 an hour, more digits", 0.2435, 0.00005, () -> Evaporation.usRate(87, 80, 0.5, 12))
                .value("kg/m2 an hour", 1.15, 0.01, () -> Evaporation.rate(31, 27, 0.5, 19))
                .value("kg/m2 an hour, more digits", 1.152, 0.0005, () -> Evaporation.rate(31, 27, 0.5, 19));
    }

    private static Row evaporationByWind() {
        Row row = Row.of("WL-02", "Evaporation, 70 °F and 70 %, lb/ft2 an hour", "PCA table of evaporation", "memory");
        double[] rates = {0.015, 0.038, 0.062, 0.085, 0.110, 0.135};
        for (int i = 0; i < rates.length; i++) {
            int wind = i * 5;
            row.value(wind + " mph", rates[i], 0.003, () -> Evaporation.usRate(70, 70, 0.7, wind));
        }
        return row;
    }

    private static Row threshold() {
        return Row.of("WL-03", "Evaporation that asks for protection", "ACI 305R", "verified")
                .value("lb/ft2 an hour", 0.2, 0, () -> Evaporation.US_LIMIT)
                .value("kg/m2 an hour, 0.2 lb/ft2 converted", 0.976, 0.03, () -> Evaporation.LIMIT);
    }

    private static Row windLimit() {
        return Row.of(
                        "WL-04",
                        "Wind that reaches it, 85 °F in air of 90 °F and 40 %",
                        "WL-01 solved",
                        "memory: algebra")
                .value("mph", 11.4, 0.1, () -> Evaporation.windMphAt(Evaporation.US_LIMIT, 85, 90, 0.4))
                .value("lb/ft2 an hour at 10 mph", 0.179, 0.0005, () -> Evaporation.usRate(85, 90, 0.4, 10));
    }

    private static Row hotWeather() {
        return Row.of(
                        "WL-05",
                        "Hot weather: from 80 °F and over 1 kg/m2 an hour (1 is yes)",
                        "ACI 305.1-14, 1.3",
                        "verified")
                .value("80 °F, 1.01 kg/m2", 1, 0, () -> yes(HotWeather.isHot(fahrenheit("80"), 1.01)))
                .value("80 °F, 1.00 kg/m2", 0, 0, () -> yes(HotWeather.isHot(fahrenheit("80"), 1.00)))
                .value("79.9 °F, 1.01 kg/m2", 0, 0, () -> yes(HotWeather.isHot(fahrenheit("79.9"), 1.01)));
    }

    private static Row hotConcrete() {
        return Row.of("WL-06", "Greatest temperature of fresh concrete", "ACI 305.1-14, 3.3", "verified")
                .value("°C", 35, 0, () -> HotWeather.GREATEST_CONCRETE_CELSIUS);
    }

    private static Row hotMasonry() {
        return Row.of("WL-07", "Hot weather for masonry (1 is yes)", "TMS 602 Art. 1.8 D", "verified")
                .value("100 °F, calm", 0, 0, () -> hotMasonry("100", "0 mph"))
                .value("100.1 °F, calm", 1, 0, () -> hotMasonry("100.1", "0 mph"))
                .value("90.1 °F, 8 mph", 0, 0, () -> hotMasonry("90.1", "8 mph"))
                .value("90.1 °F, 8.1 mph", 1, 0, () -> hotMasonry("90.1", "8.1 mph"))
                .value("90 °F, 8.1 mph", 0, 0, () -> hotMasonry("90", "8.1 mph"));
    }

    private static double hotMasonry(String fahrenheit, String wind) {
        double speed = Units.parse(Dimension.SPEED, wind).amount();
        return yes(HotWeather.isHotForMasonry(fahrenheit(fahrenheit), speed));
    }

    private static Row masonryBands() {
        return Row.of("WL-08", "Bands of cold for masonry", "TMS 602 Art. 1.8 C", "verified")
                .value("measures begin under, °F", 40, 1e-6, () -> inFahrenheit(MasonryCold.NONE.fromCelsius()))
                .value("second band from, °F", 32, 1e-6, () -> inFahrenheit(MasonryCold.COOL.fromCelsius()))
                .value("third band from, °F", 25, 1e-6, () -> inFahrenheit(MasonryCold.COLD.fromCelsius()))
                .value("last band from, °F", 20, 1e-6, () -> inFahrenheit(MasonryCold.BITTER.fromCelsius()))
                .value(
                        "enclosure at 20 °F (1 is yes)",
                        1,
                        0,
                        () -> yes(MasonryCold.of(fahrenheit("20")).asksForEnclosure()))
                .value("windbreak at 22 °F, 15 mph", 0, 0, () -> windbreak("15 mph"))
                .value("windbreak at 22 °F, 15.1 mph", 1, 0, () -> windbreak("15.1 mph"))
                .value(
                        "mean of 40 and 24 °F, °F",
                        32,
                        1e-6,
                        () -> inFahrenheit(MonthlyValues.meanOf(monthly("40 degF"), monthly("24 degF"))
                                .yearMean()));
    }

    private static double windbreak(String wind) {
        double speed = Units.parse(Dimension.SPEED, wind).amount();
        return yes(MasonryCold.of(fahrenheit("22")).asksForWindbreak(speed));
    }

    private static Row winterGrout() {
        return Row.of("WL-09", "Grout and masonry for winter grouting", "TMS 602 Art. 1.8 C", "verified")
                .value("grout from, °F", 70, 1e-6, () -> inFahrenheit(MasonryCold.LEAST_GROUT_CELSIUS))
                .value("grout to, °F", 120, 1e-6, () -> inFahrenheit(MasonryCold.GREATEST_GROUT_CELSIUS))
                .value("masonry from, °F", 40, 1e-6, () -> inFahrenheit(MasonryCold.LEAST_MASONRY_CELSIUS))
                .value(
                        "warm grout at 32 °F (1 is yes)",
                        1,
                        0,
                        () -> yes(MasonryCold.of(fahrenheit("32")).asksForWarmGrout()))
                .value(
                        "warm grout at 32.1 °F",
                        0,
                        0,
                        () -> yes(MasonryCold.of(fahrenheit("32.1")).asksForWarmGrout()))
                .value(
                        "warm masonry at 25 °F",
                        1,
                        0,
                        () -> yes(MasonryCold.of(fahrenheit("25")).asksForWarmMasonry()))
                .value(
                        "warm masonry at 25.1 °F",
                        0,
                        0,
                        () -> yes(MasonryCold.of(fahrenheit("25.1")).asksForWarmMasonry()));
    }

    private static Row leastConcrete() {
        return Row.of("WL-10", "Least temperature of concrete as placed, °F", "ACI 306R-88 Table 3.1", "memory")
                .value("under 12 in", 55, 1e-6, () -> leastConcrete("11.9 in"))
                .value("12 in", 50, 1e-6, () -> leastConcrete("12 in"))
                .value("36.1 in", 45, 1e-6, () -> leastConcrete("36.1 in"))
                .value("over 72 in", 40, 1e-6, () -> leastConcrete("72.1 in"));
    }

    private static double leastConcrete(String thickness) {
        double metres = Units.parse(Dimension.LENGTH, thickness).amount();
        return inFahrenheit(ColdWeather.leastConcreteCelsius(metres));
    }

    private static Row protection() {
        return Row.of("WL-11", "Days of protection from cold", "ACI 306R Table 5.1", "memory")
                .value("normal, sheltered", 2, 0, () -> Exposure.SHELTERED.protectionDays(Cement.NORMAL, false))
                .value("normal, exposed", 3, 0, () -> Exposure.EXPOSED.protectionDays(Cement.NORMAL, false))
                .value("normal, partly loaded", 6, 0, () -> Exposure.LOADED.protectionDays(Cement.NORMAL, false))
                .value("accelerated, sheltered", 1, 0, () -> Exposure.SHELTERED.protectionDays(Cement.NORMAL, true))
                .value("accelerated, exposed", 2, 0, () -> Exposure.EXPOSED.protectionDays(Cement.NORMAL, true))
                .value("accelerated, partly loaded", 4, 0, () -> Exposure.LOADED.protectionDays(Cement.NORMAL, true));
    }

    private static Row spell() {
        return Row.of("WL-12", "Cold weather, older definition", "ACI terminology", "verified")
                .value("daily mean under, °F", 40, 1e-6, () -> inFahrenheit(ColdWeather.COLD_CELSIUS))
                .value("three days in a row (1 is yes)", 0, 0, () -> yes(ColdWeather.isSpell(3)))
                .value("four days in a row", 1, 0, () -> yes(ColdWeather.isSpell(4)))
                .value("ends over, °F", 50, 1e-6, () -> inFahrenheit(ColdWeather.MILD_CELSIUS))
                .value("ended by 12 h over that", 0, 0, () -> yes(ColdWeather.endsSpell(12)))
                .value("ended by 12.1 h over that", 1, 0, () -> yes(ColdWeather.endsSpell(12.1)));
    }

    private static Row mixing() {
        Batch batch = new Batch(pounds("3700 lb"), fahrenheit("40"), pounds("270 lb"));
        return Row.of("WL-13", "Fresh concrete by its heat balance", "ACI 306R Eq. 3.1", "memory")
                .value("°F", 64.9, 0.2, () -> inFahrenheit(batch.concreteCelsius(fahrenheit("140"))))
                .value("water for 64.9 °F, °F", 140, 0.3, () -> inFahrenheit(batch.waterCelsius(fahrenheit("64.9"))));
    }

    private static double pounds(String mass) {
        return Units.parse(Dimension.MASS, mass).amount();
    }

    private static Row normals() {
        return Row.of(
                        "WX-05",
                        "Monthly normals, Denver Stapleton 1971-2000: mean of the year from the twelve months",
                        "NCDC normals",
                        "verified")
                .value("highs, °F", 64.2, 0.05, () -> inFahrenheit(DENVER_HIGHS.yearMean()))
                .value("lows, °F", 35.8, 0.05, () -> inFahrenheit(DENVER_LOWS.yearMean()))
                .value(
                        "high in mid-July, °F",
                        88.0,
                        0.05,
                        () -> inFahrenheit(DENVER_HIGHS.on(LocalDate.of(2027, 7, 16))))
                .value(
                        "low in mid-January, °F",
                        15.2,
                        0.05,
                        () -> inFahrenheit(DENVER_LOWS.on(LocalDate.of(2027, 1, 16))));
    }

    private static Row coldMonths() {
        MonthlyValues means = MonthlyValues.meanOf(DENVER_HIGHS, DENVER_LOWS);
        List<Month> cold = means.monthsUnder(ColdWeather.COLD_CELSIUS);
        Row row = Row.of("WX-07", "Months with a daily mean under 40 °F", "(high + low) / 2 of WX-05", "verified")
                .value("months", 5, 0, cold::size);
        List<Month> months = List.of(Month.JANUARY, Month.FEBRUARY, Month.MARCH, Month.NOVEMBER, Month.DECEMBER);
        double[] expected = {29.2, 33.2, 39.6, 37.5, 30.3};
        for (int i = 0; i < expected.length; i++) {
            Month month = months.get(i);
            row.value(month + " is one (1 is yes)", 1, 0, () -> yes(cold.contains(month)))
                    .value(
                            month + ", °F",
                            expected[i],
                            0.1,
                            () -> inFahrenheit(means.inMonthOf(LocalDate.of(2027, month, 1))));
        }
        return row;
    }

    private static MonthlyValues monthly(String text) {
        return MonthlyTemperatures.parse(text).celsius();
    }

    private static double fahrenheit(String degrees) {
        return Units.parse(Dimension.TEMPERATURE, degrees + " degF").amount();
    }

    private static double inFahrenheit(double celsius) {
        return Units.in(new Temperature(BigDecimal.valueOf(celsius)), "degF", 7).doubleValue();
    }

    private static double yes(boolean answer) {
        return answer ? 1 : 0;
    }
}
