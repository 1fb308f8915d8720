package org.firmset.trade.trace;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers a worksheet line by line. Not thread-safe; use one for each calculation. */
public final class Sheet {
    private final List<Line> lines = new ArrayList<>();
    private final Set<String> keys = new HashSet<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final List<Curve> curves = new ArrayList<>();
    private final List<CutBar> cuts = new ArrayList<>();

    public Sheet add(Line line) {
        if (!keys.add(line.key())) {
            throw new IllegalArgumentException("line key [" + line.key() + "] must be unique in its worksheet");
        }
        lines.add(line);
        return this;
    }

    public Sheet add(Finding finding) {
        findings.add(finding);
        return this;
    }

    public Sheet add(Table table) {
        tables.add(table);
        return this;
    }

    public Sheet add(Curve curve) {
        curves.add(curve);
        return this;
    }

    public Sheet add(CutBar cut) {
        cuts.add(cut);
        return this;
    }

    public Worksheet done() {
        return new Worksheet(lines, findings, tables, curves, cuts);
    }
}
