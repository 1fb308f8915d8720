package org.firmset.spend.table;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.stream.Collectors;
import org.firmset.spend.ContentHash;

/**
 * A table as it was handed in, before anything is made of it. Read by {@link TableReader}.
 *
 * @param file hash of the whole file
 * @param charset the encoding it was in, by its IANA name
 * @param separator what stands between its cells
 * @param headings its first row, stripped
 */
public record SpendTable(ContentHash file, String charset, char separator, List<String> headings, List<Row> rows) {
    public SpendTable {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /**
     * A row that is not empty; as many cells as there are headings.
     *
     * @param line where it begins in the file, from 1
     */
    public record Row(long line, List<String> cells) {
        public Row {
            cells = new PackedCells(cells);
        }
    }

    /** The same for all tables with the same headings in the same order, so that a {@link ColumnMatch} fits again. */
    public String fingerprint() {
        return ContentHash.of(headings.stream()
                        .map(Role::plain)
                        .collect(Collectors.joining("\u001f"))
                        .getBytes(UTF_8))
                .hex();
    }

    Cell cell(Row row, int column) {
        return new Cell(row.line(), headings.get(column), row.cells().get(column));
    }
}
