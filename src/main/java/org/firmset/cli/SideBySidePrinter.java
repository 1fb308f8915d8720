package org.firmset.cli;

import java.io.PrintStream;
import org.firmset.season.ask.Compared;
import org.firmset.season.ask.SideBySideWords;
import org.firmset.season.words.WordTable;

/** Prints two plans side by side, in columns. */
final class SideBySidePrinter {
    private final PrintStream out;

    SideBySidePrinter(PrintStream out) {
        this.out = out;
    }

    void print(Compared.Plans compared) {
        SideBySideWords words = new SideBySideWords(compared.plans());
        out.println(words.price());
        for (WordTable table : words.tables()) {
            if (!table.rows().isEmpty()) {
                out.print("\n" + TablePrinter.text(table));
            }
        }
        out.println();
        words.trips().forEach(out::println);
        compared.notes().forEach(out::println);
    }
}
