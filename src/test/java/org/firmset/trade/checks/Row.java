package org.firmset.trade.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * A row of the list of published check values: a quantity, its source, and how the value is known. A row may hold
 * several values. Get one from {@link #of}, fill it with {@link #value} and {@link #share}.
 */
public final class Row {
    private final String id;
    private final String quantity;
    private final String source;
    private final String known;
    private final List<Check> checks = new ArrayList<>();

    private Row(String id, String quantity, String source, String known) {
        this.id = id;
        this.quantity = quantity;
        this.source = source;
        this.known = known;
    }

    /**
     * @param id of the row, such as "CM-01"
     * @param source standard or text with its clause
     * @param known "verified", "memory" or "common practice, no source", with what was seen where it needs saying
     */
    public static Row of(String id, String quantity, String source, String known) {
        return new Row(id, quantity, source, known);
    }

    /** Adds a value. @param tolerance in the unit of the value; 0 for exact */
    public Row value(String what, double expected, double tolerance, DoubleSupplier computed) {
        checks.add(new Check(this, what, expected, tolerance, computed));
        return this;
    }

    /** Adds a value with a tolerance in percent of it. */
    public Row share(String what, double expected, double percent, DoubleSupplier computed) {
        return value(what, expected, Math.abs(expected) * percent / 100, computed);
    }

    public String id() {
        return id;
    }

    String quantity() {
        return quantity;
    }

    String source() {
        return source;
    }

    String known() {
        return known;
    }

    /** A value quoted from memory warns where it contradicts what is computed; it does not fail. */
    boolean fromMemory() {
        return known.startsWith("memory");
    }

    List<Check> checks() {
        return List.copyOf(checks);
    }
}
