package org.firmset.spend.ui;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.firmset.homestead.file.Fault;

/** Faults of a receipt on a page, where fields have names and not places in a record. */
final class FaultWords {
    private static final Pattern COUNTED = Pattern.compile("/(line|share)s/(\\d+)");

    private FaultWords() {}

    static Fault of(Fault fault) {
        String counted = COUNTED.matcher(fault.pointer()).replaceAll(FaultWords::counted);
        String words = counted.replace("unitPrice", "price of one")
                .replace("deposit", "paid down so far")
                .replace("restOn", "day of the rest")
                .replace('/', ' ')
                .strip();
        return words.isEmpty()
                ? new Fault("The receipt", fault.value(), fault.problem(), fault.remedy())
                : new Fault(
                        Character.toUpperCase(words.charAt(0)) + words.substring(1),
                        fault.value(),
                        fault.problem(),
                        fault.remedy());
    }

    private static String counted(MatchResult match) {
        return " " + match.group(1) + " " + (Integer.parseInt(match.group(2)) + 1) + ",";
    }
}
