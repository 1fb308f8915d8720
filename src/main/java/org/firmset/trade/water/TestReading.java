package org.firmset.trade.water;

import static org.firmset.trade.trace.Term.term;

import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Sheet;
import org.firmset.trade.trace.Source;

/** What was read in a pressure test, and what it says. */
final class TestReading {
    /** What conversions of units may take, a thousandth of a psi. */
    private static final double FORGIVEN = UsUnits.PSI / 1000;

    private final PressureTest test;
    private final TrappedWater trapped;
    private final double filled;
    private final Sheet sheet;

    /** @param filled water in the pipe in m3 */
    TestReading(PressureTest test, TrappedWater trapped, double filled, Sheet sheet) {
        this.test = test;
        this.trapped = trapped;
        this.filled = filled;
        this.sheet = sheet;
    }

    /**
     * Adds what was read.
     *
     * @param wanted test pressure at the gauge in pascals
     * @param thermal what the change of temperature does to the reading in pascals
     */
    Verdict read(double wanted, double thermal) {
        double start = test.startPressure().amount();
        double drop = start - test.endPressure().amount();
        double allowed = test.allowedDrop().amount() + test.gaugeStep().amount();
        sheet.add(Line.step("drop", "Drop of the reading", Amount.pressure(drop))
                .by(
                        "d = p1 - p2",
                        term("p1", "at the start", Amount.pressure(start)),
                        term(
                                "p2",
                                "at the end",
                                Amount.pressure(test.endPressure().amount()))));
        sheet.add(Line.step(
                        "drop-corrected",
                        "Drop without the whole effect of temperature",
                        Amount.pressure(drop + thermal))
                .by(
                        "d + dp",
                        term("d", "drop", Amount.pressure(drop)),
                        term("dp", "effect of temperature", Amount.pressure(thermal))));
        sheet.add(Line.step("drop-allowed", "Drop that is allowed, with the gauge's step", Amount.pressure(allowed))
                .by(
                        "a + s",
                        term("a", "allowed", Amount.pressure(test.allowedDrop().amount())),
                        term(
                                "s",
                                "step of the gauge",
                                Amount.pressure(test.gaugeStep().amount())))
                .from(Source.PRACTICE));
        lost(drop + thermal, start);
        Verdict read = Verdict.of(drop, thermal, allowed + FORGIVEN);
        explain(read, drop > allowed + FORGIVEN);
        boolean low = start + FORGIVEN < wanted;
        boolean brief = test.minutes() < test.holdMinutes();
        if (low) {
            sheet.add(Finding.warning(
                    "The test began under the test pressure: it proves nothing above the pressure it had."));
        }
        if (brief) {
            sheet.add(Finding.warning("The test was shorter than the time the pressure must hold."));
        }
        return read == Verdict.PASSES && (low || brief) ? Verdict.CANNOT_TELL : read;
    }

    private void lost(double corrected, double start) {
        double volume = Math.max(0, corrected) * trapped.compliance(start) * filled;
        sheet.add(Line.step("lost", "Water that a leak of this drop let out", Amount.liquid(volume))
                .by(
                        "v = d V (gamma + 5/4 D / (E e) + air)",
                        term("d", "drop without temperature", Amount.pressure(corrected)),
                        term("V", "water in the pipe", Amount.liquid(filled)))
                .from(Sources.TRAPPED));
    }

    private void explain(Verdict read, boolean dropped) {
        switch (read) {
            case FAILS ->
                sheet.add(Finding.warning(
                        "The drop is not explained by the change of temperature. Look for the leak; let the pressure"
                                + " off before touching a joint."));
            case CANNOT_TELL ->
                sheet.add(Finding.warning(
                        dropped
                                ? "The change of temperature may explain the drop. Wait until the water keeps its"
                                        + " temperature and test again."
                                : "The change of temperature may hide a leak. Wait until the water keeps its"
                                        + " temperature and test again."));
            case PASSES, NOT_MADE -> {}
        }
    }
}
