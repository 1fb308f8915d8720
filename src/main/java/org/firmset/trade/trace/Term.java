package org.firmset.trade.trace;

/**
 * One letter of a formula.
 *
 * @param symbol as it stands in the formula: "n"
 * @param words what it is: "cells filled"
 */
public record Term(String symbol, String words, Amount amount) {
    public static Term term(String symbol, String words, Amount amount) {
        return new Term(symbol, words, amount);
    }
}
