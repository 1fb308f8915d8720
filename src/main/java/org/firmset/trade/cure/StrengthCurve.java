package org.firmset.trade.cure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Term;

/**
 * Strength of concrete against its age at 20 °C, as a share of its 28-day strength: EN 1992-1-1 Eq. 3.2 and ACI 209R
 * Eq. 2-1 (from memory). ACI 209R tells of moist curing at room temperature; its curves are taken for 20 °C here as
 * well. A planning aid: under 3 days of age EN 1992-1-1 asks for tests.
 */
public enum StrengthCurve {
    EN_RAPID(StrengthMethod.EN_1992, Cement.RAPID, 0, 0),
    EN_NORMAL(StrengthMethod.EN_1992, Cement.NORMAL, 0, 0),
    EN_SLOW(StrengthMethod.EN_1992, Cement.SLOW, 0, 0),
    /** Type I cement; it passes the 28-day strength a little early: 1.007 at 28 days. */
    ACI_TYPE_I(StrengthMethod.ACI_209, Cement.NORMAL, 4, 0.85),
    /** Type III cement, high early strength; 0.998 at 28 days. */
    ACI_TYPE_III(StrengthMethod.ACI_209, Cement.RAPID, 2.3, 0.92);

    /**
     * The curve for core fill (grout): plain grout has 60 to 70 % at 7 days (Masonry Magazine, February 1994), which of
     * these curves only the slow one gives.
     */
    public static final StrengthCurve CORE_FILL = EN_SLOW;

    /** The temperature in degrees Celsius at which the ages of the curves are counted. */
    public static final double REFERENCE_CELSIUS = 20;

    private static final double STANDARD_AGE_DAYS = 28;

    private final StrengthMethod method;
    private final Cement cement;
    private final double a;
    private final double b;

    StrengthCurve(StrengthMethod method, Cement cement, double a, double b) {
        this.method = method;
        this.cement = cement;
        this.a = a;
        this.b = b;
    }

    /** The curve of a method for a cement; ACI 209R has none for slow cement. */
    public static Optional<StrengthCurve> of(StrengthMethod method, Cement cement) {
        return Arrays.stream(values())
                .filter(c -> c.method == method && c.cement == cement)
                .findFirst();
    }

    static StrengthCurve of(Cement cement) {
        return of(StrengthMethod.EN_1992, cement).orElseThrow();
    }

    public StrengthMethod method() {
        return method;
    }

    public Cement cement() {
        return cement;
    }

    /**
     * Strength as a share of the 28-day strength.
     *
     * @param ageDays age at 20 °C in days, over 0
     */
    public double share(double ageDays) {
        if (!(ageDays > 0)) {
            throw new IllegalArgumentException("ageDays [" + ageDays + "] must be over 0");
        }
        return switch (method) {
            case EN_1992 -> Math.exp(cement.coefficient() * (1 - Math.sqrt(STANDARD_AGE_DAYS / ageDays)));
            case ACI_209 -> 1 / (a / ageDays + b);
        };
    }

    /**
     * Days at 20 °C until a share of the 28-day strength is there: the inverse of {@link #share}.
     *
     * @param share over 0, up to 1
     */
    public double daysTo(double share) {
        Demand.share(share);
        return switch (method) {
            case EN_1992 -> {
                double root = 1 - Math.log(share) / cement.coefficient();
                yield STANDARD_AGE_DAYS / (root * root);
            }
            case ACI_209 -> a * share / (1 - b * share);
        };
    }

    Source source() {
        return switch (method) {
            case EN_1992 -> Sources.EN_STRENGTH;
            case ACI_209 -> Sources.ACI_STRENGTH;
        };
    }

    String shareFormula() {
        return switch (method) {
            case EN_1992 -> "r = exp(s (1 - sqrt(28 / t)))";
            case ACI_209 -> "r = t / (a + b t)";
        };
    }

    String daysFormula() {
        return switch (method) {
            case EN_1992 -> "t = 28 / (1 - ln(r) / s)^2";
            case ACI_209 -> "t = a r / (1 - b r)";
        };
    }

    /** The letters of the formulas that belong to the cement. */
    List<Term> constants() {
        return switch (method) {
            case EN_1992 -> List.of(Term.term("s", "coefficient of the cement", Amount.ratio(cement.coefficient())));
            case ACI_209 ->
                List.of(
                        Term.term("a", "constant of the cement, in days", Amount.days(a)),
                        Term.term("b", "constant of the cement", Amount.ratio(b)));
        };
    }
}
