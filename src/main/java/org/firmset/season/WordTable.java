package org.firmset.season;

import java.util.List;

/**
 * A table with words in its cells.
 *
 * @param rows each as long as {@code headings}
 */
public record WordTable(String title, List<String> headings, List<List<String>> rows) {
    public WordTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
