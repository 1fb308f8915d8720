package org.firmset.trade.trace;

import java.util.List;

/**
 * Figures in rows.
 *
 * @param headings as many as each row has amounts
 */
public record Table(String title, List<String> headings, List<List<Amount>> rows) {
    public Table {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Amount> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException(
                        "row " + row + " of table [" + title + "] must have " + headings.size() + " amounts");
            }
        }
    }
}
