package org.firmset.trade.trace;

import java.util.List;
import java.util.stream.Collectors;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;

/** What tests read off a worksheet. */
public final class Results {
    private Results() {}

    public static Line line(Worksheet sheet, String key) {
        return sheet.line(key).orElseThrow(() -> new AssertionError("no line [" + key + "] in " + keys(sheet)));
    }

    public static List<String> keys(Worksheet sheet) {
        return sheet.lines().stream().map(Line::key).toList();
    }

    /**
     * The amount of a line.
     *
     * @param unit for measured amounts; empty for others
     */
    public static double amount(Worksheet sheet, String key, String unit) {
        return amount(line(sheet, key).amount(), unit);
    }

    /** The amount of a line that is counted, in packs or a number. */
    public static double amount(Worksheet sheet, String key) {
        return amount(sheet, key, "");
    }

    /** Whole packs of a line. */
    public static long packs(Worksheet sheet, String key) {
        return ((Amount.Packs) line(sheet, key).amount()).whole();
    }

    public static String word(Worksheet sheet, String key) {
        return word(line(sheet, key).amount());
    }

    public static String word(Amount amount) {
        return ((Amount.Word) amount).text();
    }

    /** What a letter of a line's formula stands for. */
    public static double term(Worksheet sheet, String key, String symbol, String unit) {
        return amount(termOf(sheet, key, symbol).amount(), unit);
    }

    private static Term termOf(Worksheet sheet, String key, String symbol) {
        return line(sheet, key).terms().stream()
                .filter(t -> t.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no term [" + symbol + "] of line [" + key + "]"));
    }

    public static List<String> symbols(Worksheet sheet, String key) {
        return line(sheet, key).terms().stream().map(Term::symbol).toList();
    }

    /** Every line as people read it: key, amount, formula, what its symbols are. */
    public static String told(Worksheet sheet, UnitSystem units) {
        return sheet.lines().stream()
                .map(l -> l.key() + ": " + Show.amount(l.amount(), units) + "; " + l.formula() + "; "
                        + Show.terms(l, units))
                .map(l -> l.replaceAll("(; )+$", "") + "\n")
                .collect(Collectors.joining());
    }

    public static String told(Worksheet sheet) {
        return told(sheet, UnitSystem.US);
    }

    public static List<String> findings(Worksheet sheet, Finding.Weight weight) {
        return sheet.findings().stream()
                .filter(f -> f.weight() == weight)
                .map(Finding::text)
                .toList();
    }

    public static List<String> notes(Worksheet sheet) {
        return findings(sheet, Finding.Weight.NOTE);
    }

    public static List<String> warnings(Worksheet sheet) {
        return findings(sheet, Finding.Weight.WARNING);
    }

    public static List<String> engineers(Worksheet sheet) {
        return findings(sheet, Finding.Weight.ENGINEER);
    }

    public static double amount(Amount amount, String unit) {
        return switch (amount) {
            case Amount.Quantity quantity ->
                Units.in(quantity.measured(), unit, 9).doubleValue();
            case Amount.Count count -> count.number();
            case Amount.Packs packs -> packs.exact();
            case Amount.Number number -> number.value();
            case Amount.Both both -> both.metric().value();
            case Amount.On on -> throw new AssertionError("a date: " + on.date());
            case Amount.Word word -> throw new AssertionError("a word: " + word.text());
        };
    }
}
