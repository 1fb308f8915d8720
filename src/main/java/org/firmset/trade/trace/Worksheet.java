package org.firmset.trade.trace;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What came out of a calculation, with everything a person needs to follow it. Get one from a {@link Kind}. */
public record Worksheet(
        List<Line> lines, List<Finding> findings, List<Table> tables, List<Curve> curves, List<CutBar> cuts) {
    public Worksheet {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
        tables = List.copyOf(tables);
        curves = List.copyOf(curves);
        cuts = List.copyOf(cuts);
    }

    public Optional<Line> line(String key) {
        return lines.stream().filter(l -> l.key().equals(key)).findFirst();
    }

    /** The findings, those that a licensed engineer should see first, notes last. */
    public List<Finding> weightiestFirst() {
        return findings.stream()
                .sorted(Comparator.comparing(Finding::weight).reversed())
                .toList();
    }

    /** What to heed with any of the lines, each once, in order. */
    public List<String> cautions() {
        return lines.stream()
                .map(Line::caution)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** The lines with this role, in order. */
    public List<Line> lines(Line.Role role) {
        return lines.stream().filter(l -> l.role() == role).toList();
    }
}
