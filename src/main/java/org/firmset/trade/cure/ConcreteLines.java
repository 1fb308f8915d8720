package org.firmset.trade.cure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Term;
import org.jspecify.annotations.Nullable;

/** What a day's weather asks of fresh concrete: evaporation, its temperature, and cold in the days after. */
final class ConcreteLines {
    private static final double KMH = 3.6;
    private static final double CHART_WIND = 40;
    private static final int WIND_STEP = 5;

    private ConcreteLines() {}

    static List<Line> of(PourCase day) {
        List<Line> lines = new ArrayList<>();
        lines.add(evaporation(day));
        lines.add(usEvaporation(day));
        lines.add(Line.step("evaporation-limit", "Evaporation that asks for protection", rate(Evaporation.LIMIT))
                .from(Sources.EVAPORATION_LIMIT));
        double wind = Evaporation.windKmhAt(Evaporation.LIMIT, day.concrete(), day.air(), day.humidity());
        if (Double.isFinite(wind)) {
            lines.add(windLimit(day, wind));
        }
        lines.add(Line.step(
                        "greatest-concrete",
                        "Greatest temperature of concrete that leaves the mixer",
                        Amount.temperature(HotWeather.GREATEST_CONCRETE_CELSIUS))
                .from(Sources.HOT_CONCRETE));
        lines.addAll(cold(day));
        lines.addAll(freezing(day));
        return lines;
    }

    private static Amount rate(double kilograms) {
        return Amount.evaporation(kilograms);
    }

    private static Line evaporation(PourCase day) {
        return Line.answer("evaporation", "Water that evaporates from the surface", rate(day.evaporation()))
                .by(
                        "W = 5 ((Tc + 18)^2.5 - r (Ta + 18)^2.5) (V + 4) 10^-6, with °C and km/h",
                        Term.term("Tc", "temperature of the concrete", Amount.temperature(day.concrete())),
                        Term.term("Ta", "temperature of the air", Amount.temperature(day.air())),
                        Term.term("r", "relative humidity", Amount.ratio(day.humidity())),
                        Term.term("V", "wind", Amount.speed(day.windKmh() / KMH)))
                .from(Sources.EVAPORATION)
                .heed("Surfaces also crack below the limit where the mix bleeds little: keep them damp");
    }

    private static Line usEvaporation(PourCase day) {
        return Line.step(
                        "evaporation-us",
                        "The same by the US form of the formula",
                        Amount.number(day.usEvaporation(), 3, "lb/ft2/h"))
                .by("W = (Tc^2.5 - r Ta^2.5) (1 + 0.4 V) 10^-6, with °F and mph")
                .from(Sources.EVAPORATION_US);
    }

    private static Line windLimit(PourCase day, double windKmh) {
        return Line.answer("wind-limit", "Wind that reaches the limit", Amount.speed(windKmh / KMH))
                .by(
                        "V = 10^6 W / (5 ((Tc + 18)^2.5 - r (Ta + 18)^2.5)) - 4, with °C and km/h",
                        Term.term("W", "evaporation that asks for protection", rate(Evaporation.LIMIT)),
                        Term.term("Tc", "temperature of the concrete", Amount.temperature(day.concrete())),
                        Term.term("Ta", "temperature of the air", Amount.temperature(day.air())),
                        Term.term("r", "relative humidity", Amount.ratio(day.humidity())))
                .from(Sources.EVAPORATION);
    }

    private static List<Line> cold(PourCase day) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.step(
                        "least-concrete",
                        "Least temperature of concrete placed and held in cold weather",
                        Amount.temperature(day.leastConcrete()))
                .by(
                        "by the least dimension d",
                        Term.term(
                                "d",
                                "least dimension of the part",
                                Amount.thin(day.given().leastDimension().amount())))
                .from(Sources.COLD_LEAST));
        lines.add(Line.answer(
                        "protection-days", "Days to keep it warm in cold weather", Words.counted(day.protectionDays()))
                .from(Sources.COLD_PERIOD)
                .heed("Let it cool slowly afterwards: take insulation off on a mild day"));
        @Nullable LocalDate date = day.given().date();
        if (date != null) {
            lines.add(Line.answer(
                    "protected-until", "Last day of this protection", Amount.on(date.plusDays(day.protectionDays()))));
        }
        return lines;
    }

    private static List<Line> freezing(PourCase day) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.step(
                        "freezing-strength",
                        "Strength at which concrete survives to freeze once",
                        Amount.strength(ColdWeather.FREEZING_SURVIVED_PASCALS))
                .from(Sources.FREEZING));
        if (day.mean() >= 0) {
            lines.add(survival(day, "frost-safe-hours", "Hours until it survives frost at the daily mean", day.mean()));
        }
        double held = day.leastConcrete();
        lines.add(survival(day, "frost-safe-hours-held", "Hours until it survives frost when held warm", held));
        return lines;
    }

    private static Line survival(PourCase day, String key, String name, double celsius) {
        double share =
                ColdWeather.FREEZING_SURVIVED_PASCALS / day.given().strength().amount();
        return Line.answer(key, name, Amount.hours(day.hoursToSurviveFreezing(celsius)))
                .by(
                        "h = 24 x 28 / (1 - ln(r) / s)^2 / exp(13.65 - 4000 / (273 + T))",
                        Term.term("r", "3.5 MPa as a share of the 28-day strength", Amount.ratio(share)),
                        Term.term(
                                "s",
                                "coefficient of the cement",
                                Amount.ratio(day.given().cement().coefficient())),
                        Term.term("T", "temperature of the concrete", Amount.temperature(celsius)))
                .from(Sources.EN_STRENGTH)
                .heed("Stretched to ages under 3 days: take twice as long where frost would do harm");
    }

    static Table table(PourCase day) {
        return new Table(
                "Evaporation by wind",
                List.of("wind", "evaporation"),
                winds(day)
                        .mapToObj(wind -> List.of(Amount.speed(wind / KMH), rate(day.evaporationAt(wind))))
                        .toList());
    }

    static Curve curve(PourCase day) {
        return new Curve(
                "Evaporation by wind",
                "wind, km/h",
                "evaporation, kg/m2/h",
                winds(day)
                        .mapToObj(wind -> new Curve.Point(wind, day.evaporationAt(wind)))
                        .toList(),
                List.of(new Curve.Mark(day.windKmh(), day.evaporation(), "this day")));
    }

    /** Every 5 km/h, as far as the chart goes and the day's wind. */
    private static IntStream winds(PourCase day) {
        int steps = (int) Math.ceil(Math.max(CHART_WIND, day.windKmh()) / WIND_STEP);
        return IntStream.rangeClosed(0, steps).map(step -> step * WIND_STEP);
    }
}
