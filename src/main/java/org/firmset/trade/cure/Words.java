package org.firmset.trade.cure;

import java.util.Locale;
import org.firmset.trade.trace.Amount;

/** Figures inside sentences, and counts with their nouns. */
final class Words {
    private Words() {}

    /** "4.4 °C (40 °F)". */
    static String celsius(double celsius) {
        return "%s °C (%s °F)".formatted(plain("%.1f", celsius), plain("%.0f", celsius * 1.8 + 32));
    }

    /** "1 day" or "7 days". */
    static String count(long number, String one, String many) {
        return number == 1 ? "1 " + one : String.format(Locale.ROOT, "%,d %s", number, many);
    }

    static String days(long number) {
        return count(number, "day", "days");
    }

    static Amount counted(long number, String one, String many) {
        return Amount.count(number, number == 1 ? one : many);
    }

    static Amount counted(long days) {
        return counted(days, "day", "days");
    }

    private static String plain(String pattern, double value) {
        String shown = String.format(Locale.ROOT, pattern, value).replaceAll("\\.0$", "");
        return shown.equals("-0") ? "0" : shown;
    }
}
