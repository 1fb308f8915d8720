package org.firmset.cli;

import java.util.ArrayList;
import java.util.List;
import org.firmset.season.words.WordTable;

/** A table of words as plain text, in columns. */
final class TablePrinter {
    private static final String BETWEEN = "  ";

    private TablePrinter() {}

    /** Its title, its headings and its rows, each on a line. */
    static String text(WordTable table) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(table.headings());
        lines.addAll(table.rows());
        StringBuilder text = new StringBuilder(table.title()).append('\n');
        for (List<String> line : lines) {
            StringBuilder row = new StringBuilder();
            for (int column = 0; column < line.size(); column++) {
                int c = column;
                int width =
                        lines.stream().mapToInt(l -> l.get(c).length()).max().orElse(0);
                row.append(BETWEEN).append(padded(line.get(column), width));
            }
            text.append(row.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
