package org.firmset.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Labour or site time in whole quarter-hours, 0 or more; written "6.25 h" or "6 h 15 min". */
public record Hours(int quarters) {
    public static final Hours NONE = new Hours(0);
    private static final Pattern TEXT =
            Pattern.compile("\\s*(?:(\\d{1,6}(?:\\.\\d{1,4})?)\\s*h)?\\s*(?:(\\d{1,6})\\s*min)?\\s*");
    private static final BigDecimal FOUR = BigDecimal.valueOf(4);

    public Hours {
        if (quarters < 0) {
            throw new IllegalArgumentException("quarters [" + quarters + "] of hours must not be negative");
        }
    }

    public static Hours ofWhole(int hours) {
        return new Hours(Math.multiplyExact(hours, 4));
    }

    /** @throws UnitsFault when the text is no time in quarter-hours */
    public static Hours parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (text.isBlank() || !matcher.matches()) {
            throw new UnitsFault(
                    "'" + shortened(text) + "' is not a time; write hours such as '6.5 h' or '6 h 30 min'");
        }
        BigDecimal hours = matcher.group(1) == null ? BigDecimal.ZERO : new BigDecimal(matcher.group(1));
        BigDecimal minutes = matcher.group(2) == null ? BigDecimal.ZERO : new BigDecimal(matcher.group(2));
        BigDecimal quarters =
                hours.multiply(FOUR).add(minutes.divide(BigDecimal.valueOf(15), 6, RoundingMode.HALF_EVEN));
        try {
            return new Hours(quarters.stripTrailingZeros().intValueExact());
        } catch (ArithmeticException e) {
            throw new UnitsFault(
                    "'" + text + "' is not a whole number of quarter-hours; write '6.25 h' or '6 h 15 min'");
        }
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }

    public boolean isNone() {
        return quarters == 0;
    }

    /** The text that {@link #parse} reads back: "6.25 h". */
    @Override
    public String toString() {
        return BigDecimal.valueOf(quarters)
                        .divide(FOUR, 2, RoundingMode.UNNECESSARY)
                        .stripTrailingZeros()
                        .toPlainString()
                + " h";
    }
}
