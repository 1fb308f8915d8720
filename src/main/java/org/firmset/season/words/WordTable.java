package org.firmset.season.words;

import java.util.List;

/**
 * A table with words in its cells.
 *
 * @param rows each as long as {@code headings}
 */
public record WordTable(String title, List<String> headings, List<List<String>> rows) {
    /** Stands in a cell where there is nothing to tell. */
    public static final String NONE = "–";

    /** Begins the name of a row that is a part of one above it. */
    public static final String PART = "- ";

    public WordTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
