package org.firmset.trade.cure;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.Mass;
import org.firmset.measure.Pressure;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.firmset.measure.Units;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.climate.Readings;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Results;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Inputs for the calculators of this room, changed part by part from a mild day, and what comes out of them. */
final class Given {
    private Given() {}

    /** A pour at 20 °C on 1 May 2027. */
    static final class Pour {
        LocalDate poured = LocalDate.of(2027, 5, 1);
        Milestone milestone = Milestone.OWN;

        @Nullable
        String percent = "70";

        @Nullable
        Integer leastDays = null;

        Cement cement = Cement.NORMAL;
        StrengthMethod curve = StrengthMethod.EN_1992;
        Ageing ageing = Ageing.EN_1992;
        String high = "20 degC";
        String low = "20 degC";

        @Nullable
        String readings = null;

        Exposure exposure = Exposure.EXPOSED;
        boolean accelerated = false;
        boolean insulated = false;
        double insulatedLeast = 10;

        Worksheet work() {
            return kind("cure")
                    .work(new CuringConcrete(
                            poured,
                            milestone,
                            percent == null ? null : new BigDecimal(percent),
                            leastDays,
                            cement,
                            curve,
                            ageing,
                            MonthlyTemperatures.parse(high),
                            MonthlyTemperatures.parse(low),
                            readings == null ? null : Readings.parse(readings),
                            exposure,
                            accelerated,
                            insulated,
                            Temperature.ofCelsius(insulatedLeast)));
        }
    }

    /** A day of 20 °C with a light wind. */
    static final class Day {
        @Nullable
        LocalDate date = null;

        PourWork work = PourWork.CONCRETE;
        String now = "20 degC";

        @Nullable
        String high = null;

        @Nullable
        String low = null;

        @Nullable
        String night = null;

        int coldDaysBefore = 0;

        @Nullable
        String concrete = "20 degC";

        String humidity = "50";
        String wind = "10 km/h";
        String dimension = "0.1 m";

        @Nullable
        String rain = null;

        String strength = "20 MPa";
        Cement cement = Cement.NORMAL;
        Exposure exposure = Exposure.EXPOSED;
        boolean accelerated = false;

        @Nullable
        String wanted = null;

        String solids = "2200 kg";
        String water = "160 kg";

        @Nullable
        String solidsTemperature = null;

        Worksheet work() {
            return kind("pour-weather")
                    .work(new PourDay(
                            date,
                            work,
                            temperature(now),
                            high == null ? null : temperature(high),
                            low == null ? null : temperature(low),
                            night == null ? null : temperature(night),
                            coldDaysBefore,
                            concrete == null ? null : temperature(concrete),
                            new BigDecimal(humidity),
                            (Speed) Units.parse(Dimension.SPEED, wind),
                            (Length) Units.parse(Dimension.LENGTH, dimension),
                            rain == null ? null : new BigDecimal(rain),
                            (Pressure) Units.parse(Dimension.PRESSURE, strength),
                            cement,
                            exposure,
                            accelerated,
                            wanted == null ? null : temperature(wanted),
                            (Mass) Units.parse(Dimension.MASS, solids),
                            (Mass) Units.parse(Dimension.MASS, water),
                            solidsTemperature == null ? null : temperature(solidsTemperature)));
        }
    }

    static Kind<?> kind(String key) {
        return CureKinds.ALL.stream()
                .filter(k -> k.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Temperature temperature(String text) {
        return (Temperature) Units.parse(Dimension.TEMPERATURE, text);
    }

    /** The number of a line: a count, a quantity in its stored unit, or a bare number. */
    static double number(Worksheet sheet, String key) {
        return number(Results.line(sheet, key).amount());
    }

    static double number(Amount amount) {
        return switch (amount) {
            case Amount.Count count -> count.number();
            case Amount.Quantity quantity -> quantity.measured().amount();
            case Amount.Number number -> number.value();
            case Amount.Both both -> both.metric().value();
            case Amount.Packs packs -> packs.exact();
            case Amount.On _, Amount.Word _ -> throw new AssertionError(amount + " has no number");
        };
    }

    /** How much a finding that begins like this matters; nothing when there is none. */
    static Finding.@Nullable Weight weight(Worksheet sheet, String beginning) {
        return sheet.findings().stream()
                .filter(f -> f.text().startsWith(beginning))
                .map(Finding::weight)
                .findFirst()
                .orElse(null);
    }

    static String texts(Worksheet sheet) {
        return String.join("\n", sheet.findings().stream().map(Finding::text).toList());
    }
}
