package org.firmset.trade.cure;

import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Term;
import org.firmset.trade.trace.Worksheet;

/** From a pour and the temperatures after it to the day its wait ends. */
public final class CuringTime {
    private CuringTime() {}

    /**
     * Works out the wait of a pour.
     *
     * @throws Refusal when lows are over highs, a share is missing, or ACI 209R is asked for slow cement
     */
    public static Worksheet work(CuringConcrete given) {
        CuringCase pour = CuringCase.of(given);
        Sheet sheet = new Sheet()
                .add(awaited(pour))
                .add(needed(pour))
                .add(strengthDays(pour))
                .add(leastDays(pour))
                .add(waitDays(pour))
                .add(readyOn(pour))
                .add(age(pour))
                .add(shareThen(pour))
                .add(protection(pour));
        nights(pour).forEach(sheet::add);
        CuringFindings.of(pour).forEach(sheet::add);
        return sheet.add(CuringTables.growth(pour))
                .add(CuringTables.months(pour))
                .add(CuringTables.methods(pour))
                .add(CuringTables.curve(pour))
                .done();
    }

    private static Line awaited(CuringCase pour) {
        Line line = Line.step(
                "awaited-share",
                "Share of the 28-day strength that is waited for",
                Amount.percent(pour.goal().share()));
        return pour.given().sharePercent() == null ? line.from(Source.PRACTICE) : line;
    }

    private static Line needed(CuringCase pour) {
        StrengthCurve curve = pour.goal().curve();
        return Line.step(
                        "age-needed",
                        "Age at 20 °C that gives it, in days",
                        Amount.days(pour.goal().daysNeeded()))
                .by(
                        curve.daysFormula(),
                        terms(
                                curve,
                                Term.term("r", "share", Amount.ratio(pour.goal().share()))))
                .from(curve.source());
    }

    private static Term[] terms(StrengthCurve curve, Term first) {
        List<Term> terms = new ArrayList<>(List.of(first));
        terms.addAll(curve.constants());
        return terms.toArray(Term[]::new);
    }

    private static Line strengthDays(CuringCase pour) {
        double mean = pour.ages().meanCelsius(pour.strengthDays());
        return Line.step("days-for-strength", "Whole days until the strength is there", days(pour.strengthDays()))
                .by(
                        pour.given().ageing().formula() + "; the least n with f1 + ... + fn >= t",
                        Term.term("T", "mean temperature of a day; over the n days", Amount.temperature(mean)),
                        Term.term(
                                "f",
                                "days that such a day counts for",
                                Amount.ratio(pour.given().ageing().factor(mean))),
                        Term.term("t", "age needed", Amount.days(pour.goal().daysNeeded())))
                .from(pour.given().ageing().source());
    }

    private static Line leastDays(CuringCase pour) {
        Line line = Line.step("least-days", "Days to wait at least", days(pour.leastDays()));
        return pour.given().leastDays() == null
                ? line.from(pour.given().milestone().daysSource())
                : line;
    }

    private static Line waitDays(CuringCase pour) {
        return Line.answer("wait-days", "Days to wait after the day of the pour", days(pour.waitDays()))
                .by(
                        "N = max(n, m)",
                        Term.term("n", "days until the strength is there", days(pour.strengthDays())),
                        Term.term("m", "days to wait at least", days(pour.leastDays())))
                .heed("Put a longer wait where the drawing, the maker or the building office asks for one");
    }

    private static Line readyOn(CuringCase pour) {
        return Line.answer(
                        "ready-on", "First day to " + pour.given().milestone().words(), Amount.on(pour.readyOn()))
                .heed("A planning aid, never a strength test: look at the concrete and test it before you trust it");
    }

    private static Line age(CuringCase pour) {
        return Line.step(
                        "age-when-ready",
                        "Age on that day, in days at the reference temperature",
                        Amount.days(pour.ages().after(pour.waitDays())))
                .by("t = f1 + ... + fN", Term.term("N", "days waited", days(pour.waitDays())))
                .from(pour.given().ageing().source());
    }

    private static Line shareThen(CuringCase pour) {
        StrengthCurve curve = pour.goal().curve();
        Term age = Term.term("t", "age on that day", Amount.days(pour.ages().after(pour.waitDays())));
        return Line.answer(
                        "share-when-ready",
                        "Share of the 28-day strength on that day",
                        Amount.percent(pour.shareAfter(pour.waitDays())))
                .by(curve.shareFormula(), terms(curve, age))
                .from(curve.source());
    }

    private static Line protection(CuringCase pour) {
        return Line.answer("protection-days", "Days to keep it warm in cold weather", days(pour.protectionDays()))
                .from(Sources.COLD_PERIOD)
                .heed("Cold weather is air under 4.4 °C (40 °F) at any hour of these days");
    }

    private static List<Line> nights(CuringCase pour) {
        return List.of(
                Line.step(
                        "coldest-night",
                        "Usual low of the coldest of these nights",
                        Amount.temperature(pour.coldestNight())),
                Line.step(
                        "cold-nights",
                        "Nights among them that are usually under 4.4 °C (40 °F)",
                        nights(pour.nightsUnder(ColdWeather.COLD_CELSIUS))),
                Line.step(
                        "frost-nights",
                        "Nights among them that are usually under 0 °C (32 °F)",
                        nights(pour.nightsUnder(0))));
    }

    private static Amount days(int days) {
        return Words.counted(days);
    }

    private static Amount nights(long nights) {
        return Words.counted(nights, "night", "nights");
    }
}
