package org.firmset.trade.water;

import java.util.List;
import java.util.Objects;
import org.firmset.measure.Units;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Worksheet;

/** What tests look for in a worksheet. */
public final class Seen {
    private Seen() {}

    public static Line line(Worksheet sheet, String key) {
        return sheet.line(key).orElseThrow(() -> new AssertionError("no line [" + key + "] in " + keys(sheet)));
    }

    public static List<String> keys(Worksheet sheet) {
        return sheet.lines().stream().map(Line::key).toList();
    }

    /** @param unit its symbol; empty for a bare number */
    public static double amount(Worksheet sheet, String key, String unit) {
        return amount(line(sheet, key).amount(), unit);
    }

    public static double amount(Amount amount, String unit) {
        return switch (amount) {
            case Amount.Quantity quantity ->
                Units.in(quantity.measured(), unit, 9).doubleValue();
            case Amount.Number number -> number.value();
            case Amount.Both both -> both.metric().value();
            case Amount.Count count -> count.number();
            case Amount.Packs packs -> packs.exact();
            case Amount.On on -> on.date().toEpochDay();
            case Amount.Word word -> throw new AssertionError("a word: " + word.text());
        };
    }

    public static String word(Worksheet sheet, String key) {
        return ((Amount.Word) line(sheet, key).amount()).text();
    }

    public static String word(Amount amount) {
        return ((Amount.Word) amount).text();
    }

    /** The term of a line as a number in a unit. */
    public static double term(Worksheet sheet, String key, String symbol, String unit) {
        return amount(
                line(sheet, key).terms().stream()
                        .filter(t -> t.symbol().equals(symbol))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no term [" + symbol + "] in " + line(sheet, key)))
                        .amount(),
                unit);
    }

    /** Weights and beginnings of the findings, to see which are there. */
    public static List<String> findings(Worksheet sheet, Finding.Weight weight) {
        return sheet.findings().stream()
                .filter(f -> f.weight() == weight)
                .map(Finding::text)
                .toList();
    }

    public static List<String> warnings(Worksheet sheet) {
        return findings(sheet, Finding.Weight.WARNING);
    }

    public static List<String> engineer(Worksheet sheet) {
        return findings(sheet, Finding.Weight.ENGINEER);
    }

    public static List<String> notes(Worksheet sheet) {
        return findings(sheet, Finding.Weight.NOTE);
    }

    static String role(Worksheet sheet, String key) {
        return Objects.toString(line(sheet, key).role());
    }
}
