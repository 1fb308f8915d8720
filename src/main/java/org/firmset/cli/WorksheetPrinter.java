package org.firmset.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.CutBar;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Worksheet;

/** Prints a worksheet as plain text: what it comes to, what to heed, and how each figure came about. */
final class WorksheetPrinter {
    private final Kind<?> kind;
    private final Worksheet worksheet;
    private final UnitSystem units;
    private final StringBuilder text = new StringBuilder();

    WorksheetPrinter(Kind<?> kind, Worksheet worksheet, UnitSystem units) {
        this.kind = kind;
        this.worksheet = worksheet;
        this.units = units;
    }

    String text() {
        line("%s", kind.name());
        results();
        worksheet.weightiestFirst().forEach(this::finding);
        worksheet.cautions().forEach(c -> line("Caution: %s", c));
        worksheet.cuts().forEach(this::cut);
        worksheet.tables().forEach(this::table);
        line("");
        line("How it came about");
        worksheet.lines().forEach(this::came);
        return text.toString();
    }

    private void line(String format, Object... arguments) {
        text.append(String.format(Locale.ROOT, format, arguments).stripTrailing())
                .append('\n');
    }

    private void results() {
        worksheet.lines().stream()
                .filter(l -> l.role() != Line.Role.STEP)
                .forEach(l -> line("  %-44s %s", l.name(), Show.amount(l.amount(), units)));
        line("");
    }

    private void finding(Finding finding) {
        String word = switch (finding.weight()) {
            case NOTE -> "Note";
            case WARNING -> "Look";
            case ENGINEER -> "Ask";
        };
        line("%s: %s", word, finding.text());
    }

    private void cut(CutBar bar) {
        List<String> pieces = bar.pieces().stream()
                .map(p -> Show.amount(Amount.length(p), units))
                .toList();
        line(
                "  %d x from %s: %s; left over %s",
                bar.times(),
                Show.amount(Amount.length(bar.stock()), units),
                String.join(" + ", pieces),
                Show.amount(Amount.length(bar.left()), units));
    }

    private void table(Table table) {
        line("");
        line("%s", table.title());
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.headings());
        table.rows()
                .forEach(
                        r -> rows.add(r.stream().map(a -> Show.amount(a, units)).toList()));
        int[] widths = new int[table.headings().size()];
        rows.forEach(r -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], r.get(i).length());
            }
        });
        rows.forEach(r -> {
            StringBuilder row = new StringBuilder("  ");
            for (int i = 0; i < widths.length; i++) {
                row.append(String.format(Locale.ROOT, "%-" + Math.max(1, widths[i]) + "s  ", r.get(i)));
            }
            line("%s", row.toString());
        });
    }

    private void came(Line figure) {
        line("  %s = %s", figure.name(), Show.amount(figure.amount(), units));
        if (!figure.formula().isEmpty()) {
            line("    %s", figure.formula());
        }
        if (!figure.terms().isEmpty()) {
            line("    %s", Show.terms(figure, units));
        }
        line("    Source: %s", figure.source().words());
    }
}
