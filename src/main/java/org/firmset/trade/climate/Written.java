package org.firmset.trade.climate;

import java.math.BigDecimal;
import org.firmset.measure.UnitsFault;

/** What texts of temperatures have in common. */
final class Written {
    /** Longer texts are refused unread. */
    static final int LONGEST = 2000;

    /** The regular expression of a temperature's number. */
    static final String NUMBER = "[+-]?\\d{1,3}(?:\\.\\d{1,9})?";

    /** The regular expression of what stands behind it. */
    static final String UNIT = "deg[CF]|°?[CF]";

    /** No daily mean, high or low on earth is beyond it, in degrees Celsius. */
    private static final double FARTHEST = 60;

    private static final int SHOWN = 60;

    private Written() {}

    static boolean onEarth(BigDecimal number, Scale scale) {
        return Math.abs(scale.celsius(number)) <= FARTHEST;
    }

    /** @param problem goes on after the text: "is not a date" */
    static UnitsFault fault(String text, String problem, String example) {
        String shown = text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
        return new UnitsFault("'%s' %s; write it such as '%s'".formatted(shown, problem, example));
    }
}
