package org.firmset.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import org.firmset.season.Compared;
import org.firmset.season.SideBySideWords;

/** Prints two plans side by side, in columns. */
final class SideBySidePrinter {
    private static final String BETWEEN = "  ";

    private final PrintStream out;

    SideBySidePrinter(PrintStream out) {
        this.out = out;
    }

    void print(Compared.Plans compared) {
        SideBySideWords words = new SideBySideWords(compared.plans());
        out.println(words.price());
        for (SideBySideWords.Table table : words.tables()) {
            if (!table.rows().isEmpty()) {
                print(table);
            }
        }
        out.println();
        words.trips().forEach(out::println);
        compared.notes().forEach(out::println);
    }

    private void print(SideBySideWords.Table table) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(table.headings());
        lines.addAll(table.rows());
        out.println();
        out.println(table.title());
        for (List<String> line : lines) {
            StringBuilder text = new StringBuilder();
            for (int column = 0; column < line.size(); column++) {
                int c = column;
                int width =
                        lines.stream().mapToInt(l -> l.get(c).length()).max().orElse(0);
                text.append(BETWEEN).append(padded(line.get(column), width));
            }
            out.println(text.toString().stripTrailing());
        }
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }
}
