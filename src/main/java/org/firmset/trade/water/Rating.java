package org.firmset.trade.water;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firmset.measure.Dimension;
import org.firmset.measure.Flow;
import org.firmset.measure.Pressure;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;

/**
 * What an outlet lets through at one pressure, and so at any other: Q = k sqrt(p).
 *
 * @param flow over 0, at most 400 L/min
 * @param pressure over 0, at most 1.4 MPa, just before the outlet
 */
public record Rating(Flow flow, Pressure pressure) {
    private static final Pattern TEXT = Pattern.compile("(.+)\\bat\\b(.+)");
    private static final double MOST_FLOW = 400;
    private static final double MOST_PRESSURE = 1.4e6;

    public Rating {
        if (!within(flow.amount(), MOST_FLOW) || !within(pressure.amount(), MOST_PRESSURE)) {
            throw new UnitsFault("'" + written(flow, pressure)
                    + "' is not a flow of up to 100 gpm at a pressure of up to 200 psi; write it such as '2.5 gpm at 80"
                    + " psi'");
        }
    }

    /** @throws UnitsFault when the text is no flow at a pressure such as "2.5 gpm at 80 psi" */
    public static Rating parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            throw new UnitsFault("'" + Outlets.shortened(text.strip())
                    + "' is not a flow at a pressure; write it such as '2.5 gpm at 80 psi'");
        }
        return new Rating(
                new Flow(Units.parse(Dimension.FLOW, matcher.group(1).strip()).value()),
                new Pressure(Units.parse(Dimension.PRESSURE, matcher.group(2).strip())
                        .value()));
    }

    private static boolean within(double value, double most) {
        return value > 0 && value <= most;
    }

    /**
     * Flow in L/min.
     *
     * @param pascals pressure just before the outlet while it runs, 0 or more
     */
    public double litresPerMinuteAt(double pascals) {
        return flow.amount() * Math.sqrt(Must.be0OrMore("pascals", pascals) / pressure.amount());
    }

    private static String written(Flow flow, Pressure pressure) {
        return Units.editable(flow, UnitSystem.US) + " at " + Units.editable(pressure, UnitSystem.US);
    }

    /** The text that {@link #parse} reads back to the same: "2.5 gpm at 80 psi". */
    @Override
    public String toString() {
        return written(flow, pressure);
    }
}
