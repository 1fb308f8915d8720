package org.firmset.trade.trace;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a result and how it came about.
 *
 * @param key lower-case letters and hyphens, unique in its result, kept for good: stages refer to it
 * @param name what it is, in words
 * @param formula in symbols, the figure on the left: "V = n v - b"; empty for something given
 * @param terms what the symbols mean and are
 * @param caution what to heed with this figure; null for nothing in particular
 */
public record Line(
        String key,
        String name,
        Role role,
        Amount amount,
        String formula,
        List<Term> terms,
        Source source,
        @Nullable String caution) {

    /** What a figure is good for. */
    public enum Role {
        /** A step on the way. */
        STEP,
        /** What was asked. */
        ANSWER,
        /** What must be bought or brought: a stage can take its need from it. */
        MATERIAL,
        /** Labour of all people together: a stage can be compared with it. */
        LABOUR
    }

    public Line {
        terms = List.copyOf(terms);
    }

    public static Line step(String key, String name, Amount amount) {
        return new Line(key, name, Role.STEP, amount, "", List.of(), Source.ARITHMETIC, null);
    }

    public static Line answer(String key, String name, Amount amount) {
        return step(key, name, amount).as(Role.ANSWER);
    }

    public static Line material(String key, String name, Amount amount) {
        return step(key, name, amount).as(Role.MATERIAL);
    }

    public static Line labour(double hours) {
        return step("labour", "Labour of all people together", Amount.hours(hours))
                .as(Role.LABOUR);
    }

    private Line as(Role changed) {
        return new Line(key, name, changed, amount, formula, terms, source, caution);
    }

    /** The same with its formula and what the symbols are. */
    public Line by(String symbols, Term... letters) {
        return new Line(key, name, role, amount, symbols, List.of(letters), source, caution);
    }

    public Line from(Source origin) {
        return new Line(key, name, role, amount, formula, terms, origin, caution);
    }

    public Line heed(String warning) {
        return new Line(key, name, role, amount, formula, terms, source, warning);
    }
}
