package org.firmset.trade.cure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.firmset.trade.climate.MonthlyTemperatures;
import org.firmset.trade.trace.Finding;

/** What one ought to know about the wait of a pour. */
final class CuringFindings {
    /** Means over it are hot for fresh concrete, in degrees Celsius (common practice, no source). */
    private static final double HOT_CELSIUS = 32;

    /** Under this age EN 1992-1-1 asks for tests (from memory). */
    private static final double EARLY_DAYS = 3;

    private final CuringCase pour;
    private final List<Finding> found = new ArrayList<>();

    private CuringFindings(CuringCase pour) {
        this.pour = pour;
    }

    static List<Finding> of(CuringCase pour) {
        CuringFindings findings = new CuringFindings(pour);
        findings.limitsOfTheSum();
        findings.care();
        findings.cold();
        findings.heat();
        findings.milestone();
        findings.methods();
        findings.assumptions();
        return List.copyOf(findings.found);
    }

    private void note(String text) {
        found.add(Finding.note(text));
    }

    private void warning(String text) {
        found.add(Finding.warning(text));
    }

    private void limitsOfTheSum() {
        if (!pour.arrives()) {
            warning("It is never warm enough: the strength is not there after %s, where the count ends."
                    .formatted(Words.days(Strength.LONGEST_DAYS)));
        }
        note("A planning aid, never a strength test: no formula knows this mix and how it is looked after. Local code,"
                + " the drawing and the maker come first.");
        if (pour.goal().daysNeeded() < EARLY_DAYS) {
            note("The curve is stretched under 3 days of age; EN 1992-1-1 asks for tests there (from memory).");
        }
        if (pour.shareAfter(pour.waitDays()) > 1) {
            note("Strength over 100 % comes late and is not to be relied on.");
        }
    }

    private void care() {
        note("The curve is that of concrete which is kept damp: aim at seven days, three at the least. Concrete left to"
                + " dry may end at about half of its strength (masonry and concrete handbook).");
    }

    private void cold() {
        long frozen = pour.ages().daysUnder(0, pour.waitDays());
        if (frozen > 0) {
            boolean counted = pour.given().ageing() == Ageing.NURSE_SAUL_MINUS_TEN;
            String how = counted ? "; this way of counting still counts them down to -10 °C" : " and count nothing";
            warning("%s of the wait under 0 °C (32 °F) in the mean%s. Frozen concrete gains nothing, or is ruined."
                    .formatted(Words.days(frozen), how));
        }
        long nights = pour.nightsUnder(ColdWeather.COLD_CELSIUS);
        if (nights > 0) {
            String text = "%s under 4.4 °C (40 °F) usual after the pour, down to %s: keep cold from it for %s."
                    .formatted(
                            Words.count(nights, "night", "nights"),
                            Words.celsius(pour.coldestNight()),
                            Words.days(pour.protectionDays()));
            found.add(
                    pour.given().insulated()
                            ? Finding.note(text + " Insulation must touch it, edges and corners too.")
                            : Finding.warning(text));
        }
        if (pour.nightsUnder(0) > 0 && !pour.given().insulated()) {
            warning("Concrete that freezes before it has about 3.5 MPa (500 psi) is ruined, and nights with frost are"
                    + " usual then.");
        }
    }

    private void heat() {
        long hot = pour.ages().daysOver(HOT_CELSIUS, pour.waitDays());
        if (hot > 0) {
            warning("%s of the wait with a mean over 32 °C (90 °F). Concrete that cures hot gains early and loses"
                            .formatted(Words.days(hot))
                    + " later, which none of these formulas counts.");
        }
    }

    private void milestone() {
        long mild = pour.ages().daysUnder(ColdWeather.MILD_CELSIUS, pour.leastDays());
        if (pour.given().milestone().isStripping() && mild > 0) {
            warning("%s of the least days with a mean under 10 °C (50 °F); guidance for stripping does not count such."
                    .formatted(Words.days(mild)));
        }
        switch (pour.given().milestone()) {
            case STRIP_SIDE_FORMS -> note("Stripping is not loading: wait longer before anything rests on it.");
            case STRIP_PROPS ->
                found.add(Finding.engineer("What props and soffit forms carry can fall on people; longer spans wait"
                        + " longer, and nothing may rest on it yet."));
            case COMPACT_AGAINST_WALL -> wall();
            case SET_TANK ->
                note("The slab is to be 100 mm (4 in) larger than the tank all round (two tank makers). Fill the tank"
                        + " in steps and never stand below it.");
            case WALK_ON_SLAB, LAY_BLOCK_ON_FOOTING, WHEELBARROW_TRAFFIC, OWN -> {}
        }
    }

    private void wall() {
        warning("Fill that is compacted pushes harder on a wall than it does later: brace the wall, compact thin layers"
                + " with a light plate, and have a wall that holds back earth designed.");
        if (pour.given().cement() != StrengthCurve.CORE_FILL.cement()) {
            note("Plain core fill has 60 to 70 % at 7 days (Masonry Magazine, 1994), as only slow cement has here.");
        }
    }

    private void methods() {
        StrengthCurve curve = pour.goal().curve();
        Arrays.stream(StrengthMethod.values())
                .filter(method -> method != curve.method())
                .flatMap(method -> StrengthCurve.of(method, curve.cement()).stream())
                .forEach(this::otherCurve);
        if (curve.method() == StrengthMethod.ACI_209) {
            note(String.format(
                    Locale.ROOT,
                    "The curve of ACI 209R has a share of %.3f at 28 days; it is taken for 20 °C here.",
                    curve.share(CuringCase.STANDARD_DAYS)));
        }
        if (pour.given().ageing().referenceCelsius() != StrengthCurve.REFERENCE_CELSIUS) {
            note(String.format(
                    Locale.ROOT,
                    "Days are counted for 23 °C while the curve is that of 20 °C, where a day counts as %.2f: this wait"
                            + " comes out longer than with one temperature for both.",
                    pour.given().ageing().factor(StrengthCurve.REFERENCE_CELSIUS)));
        }
    }

    private void otherCurve(StrengthCurve other) {
        int days = CuringTables.daysBy(pour, other, pour.given().ageing());
        note("By the curve of %s the strength takes %s, by that of %s %s: published curves differ."
                .formatted(
                        other.method().words(),
                        Words.days(days),
                        pour.goal().curve().method().words(),
                        Words.days(pour.strengthDays())));
    }

    private void assumptions() {
        MonthlyTemperatures high = pour.given().meanHigh();
        if (high.constant() && pour.given().meanLow().constant()) {
            double mean = (high.celsius().yearMean() + pour.nights().yearMean()) / 2;
            note("Assumed: %s on every day of the year. Enter the highs and lows of the place's twelve months."
                    .formatted(Words.celsius(mean)));
        }
        note(
                pour.given().insulated()
                        ? "The concrete is taken to be held at %s or more until the wait is over."
                                .formatted(Words.celsius(
                                        pour.given().insulatedLeast().amount()))
                        : "The concrete is taken to be as warm as the air in the daily mean; thin parts and corners are"
                                + " colder at night.");
    }
}
