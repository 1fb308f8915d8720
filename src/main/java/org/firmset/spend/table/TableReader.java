package org.firmset.spend.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.ContentHash;

/** Reads a table of any encoding and separator people have, within limits that keep a wrong file from doing harm. */
public final class TableReader {
    /** Bytes; a bigger file is refused before it is read. */
    public static final int MOST_BYTES = 16 << 20;

    public static final int MOST_LINES = 100_000;
    /** Characters. */
    public static final int LONGEST_LINE = 10_000;

    public static final int MOST_COLUMNS = 200;

    private final List<Fault> faults = new ArrayList<>();

    private TableReader() {}

    /** A table, or what keeps the file from being one. */
    public record Read(Optional<SpendTable> table, List<Fault> faults) {
        public Read {
            faults = List.copyOf(faults);
        }
    }

    /** A file on this machine; its size is looked at before its content. */
    public static Read read(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            return new Read(Optional.empty(), List.of(tooBig()));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in);
        }
    }

    /** An upload; no more than the limit is ever taken from it. */
    public static Read read(InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        return bytes.length > MOST_BYTES ? new Read(Optional.empty(), List.of(tooBig())) : read(bytes);
    }

    public static Read read(byte[] bytes) {
        TableReader reader = new TableReader();
        Optional<SpendTable> table = Decoding.of(bytes).flatMap(d -> reader.table(d, ContentHash.of(bytes)));
        if (table.isEmpty() && reader.faults.isEmpty()) {
            reader.refuse("is no text, or in an encoding that is not known", "Save the table as CSV in UTF-8");
        }
        return new Read(reader.faults.isEmpty() ? table : Optional.empty(), reader.faults);
    }

    private static Fault tooBig() {
        return new Fault(
                "", "", "is over " + (MOST_BYTES >> 20) + " MiB", "Hand in the receipts year by year, as text only");
    }

    private Optional<SpendTable> table(Decoding decoding, ContentHash hash) {
        checkLines(decoding.text());
        Optional<Character> separator = faults.isEmpty() ? Separators.of(decoding.text()) : Optional.empty();
        if (separator.isEmpty()) {
            if (faults.isEmpty()) {
                refuse(
                        decoding.text().isBlank() ? "is empty" : "has only one column",
                        "Save the table with commas, semicolons or tabs between its cells and headings in its first row");
            }
            return Optional.empty();
        }
        List<SpendTable.Row> rows = rows(decoding.text(), separator.get());
        if (!faults.isEmpty()) {
            return Optional.empty();
        }
        List<String> headings = rows.getFirst().cells();
        checkHeadings(headings);
        checkWidths(rows, headings.size());
        return Optional.of(new SpendTable(
                hash, decoding.charset().name(), separator.get(), headings, rows.subList(1, rows.size())));
    }

    private void checkLines(String text) {
        int lines = 1;
        int start = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
            checkLine(lines, end - start);
            start = end + 1;
            lines += start < text.length() ? 1 : 0;
        }
        checkLine(lines, text.length() - start);
        if (lines > MOST_LINES) {
            refuse("has " + lines + " lines, more than " + MOST_LINES, "Hand it in as several tables");
        }
    }

    private void checkLine(int line, int length) {
        if (length > LONGEST_LINE && faults.isEmpty()) {
            faults.add(new Fault(
                    "line " + line,
                    length + " characters",
                    "is longer than " + LONGEST_LINE,
                    "See whether this is a table with one line for each row"));
        }
    }

    private List<SpendTable.Row> rows(String text, char separator) {
        List<SpendTable.Row> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord row : parser) {
                add(rows, row, parser.getCurrentLineNumber());
            }
        } catch (IOException | UncheckedIOException e) {
            faults.add(new Fault(
                    rows.isEmpty()
                            ? "in the first line"
                            : "after line " + rows.getLast().line(),
                    "",
                    "stands a quote that is not closed or does not end its cell",
                    "Write a quote inside a cell twice, and quotes around the whole cell"));
        }
        return rows;
    }

    /** @param endLine the line the row ends in: it begins as many lines before as its cells hold breaks */
    private static void add(List<SpendTable.Row> rows, CSVRecord row, long endLine) {
        List<String> cells = new ArrayList<>();
        long breaks = 0;
        for (String cell : row) {
            breaks += cell.chars().filter(c -> c == '\n').count();
            cells.add(Neutral.restore(cell).strip());
        }
        if (cells.stream().anyMatch(c -> !c.isEmpty())) {
            rows.add(new SpendTable.Row(endLine - breaks, cells));
        }
    }

    private void checkHeadings(List<String> headings) {
        if (headings.size() > MOST_COLUMNS) {
            refuse("has " + headings.size() + " columns, more than " + MOST_COLUMNS, "Leave out what is not needed");
        }
        Set<String> seen = new HashSet<>();
        for (String heading : headings) {
            if (!heading.isEmpty() && !seen.add(heading)) {
                faults.add(new Fault("line 1", heading, "is the heading of two columns", "Give one another name"));
            }
        }
    }

    private void checkWidths(List<SpendTable.Row> rows, int width) {
        rows.stream()
                .filter(r -> r.cells().size() != width)
                .limit(Fault.MOST)
                .forEach(r -> faults.add(new Fault(
                        "line " + r.line(),
                        r.cells().size() + " cells",
                        "are not as many as the " + width + " headings",
                        "Put quotes around a cell that holds a separator, or fill in the missing cells")));
    }

    private void refuse(String problem, String remedy) {
        faults.add(new Fault("", "", problem, remedy));
    }
}
