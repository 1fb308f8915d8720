package org.firmset.trade.climate;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * Reads one table of weather (RFC 4180) and collects what is wrong with it. Each line has a key, such as its month, and numbers.
 *
 * @param <K> what tells lines apart
 * @param <C> the other columns
 */
abstract class TableReader<K, C extends TableColumn> {
    private static final int MOST_FAULTS = 50;
    /** A line a day for a year is far shorter; a hostile text is refused unread. */
    private static final int LONGEST = 20_000;

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,6}(\\.\\d{1,20})?");
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    private final String keyColumn;
    private final List<C> columns;
    private final List<TableFault> faults = new ArrayList<>();

    TableReader(String keyColumn, List<C> columns) {
        this.keyColumn = keyColumn;
        this.columns = columns;
    }

    /** The key a text stands for; null after a fault was told. */
    abstract @Nullable K key(int line, String text);

    /** A line whose values are numbers within their limits. */
    abstract void row(int line, List<String> header, K key, Map<C, Double> values);

    /** After all lines were read; not when the text cannot be split into lines. */
    abstract void end();

    final List<TableFault> faults() {
        return faults.stream().limit(MOST_FAULTS).toList();
    }

    final void fault(int line, String column, String value, String problem, String remedy) {
        faults.add(new TableFault(line, column, value, problem, remedy));
    }

    /** @param shape what a table looks like: "a header and twelve lines" */
    final void readText(String text, String shape) {
        if (text.length() > LONGEST) {
            fault(0, "", "", "is longer than 20,000 characters", "Write " + shape);
            return;
        }
        // some spreadsheets begin a text with a mark of its byte order
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        long line = 0;
        try (CSVParser parser = FORMAT.parse(new StringReader(plain))) {
            List<String> header = List.of();
            for (CSVRecord row : parser) {
                line = parser.getCurrentLineNumber();
                if (row.getRecordNumber() == 1) {
                    header = header(row, (int) line);
                } else if (faults.isEmpty() || !header.isEmpty()) {
                    row(header, row, (int) line);
                }
            }
        } catch (IOException | UncheckedIOException e) {
            fault(
                    (int) line + 1,
                    "",
                    "",
                    "is not comma-separated text",
                    "Close every quote; double a quote inside quotes");
            return;
        }
        end();
    }

    /** The names of the columns; none when lines cannot be read by them. */
    private List<String> header(CSVRecord row, int line) {
        List<String> names = row.toList();
        int before = faults.size();
        for (String name : names) {
            if (!name.equals(keyColumn) && column(name).isEmpty()) {
                fault(line, name, "", "is not a column of this table", "Write one of " + allHeaders());
            }
        }
        once(line, names, keyColumn, Stream.of(keyColumn), true);
        for (C column : columns) {
            once(line, names, column.key(), column.headers(), column.required());
        }
        return faults.size() > before ? List.of() : names;
    }

    private Optional<C> column(String header) {
        return columns.stream().filter(c -> c.unitIn(header).isPresent()).findFirst();
    }

    private void once(int line, List<String> names, String key, Stream<String> headers, boolean required) {
        List<String> allowed = headers.toList();
        long count = names.stream().filter(allowed::contains).count();
        if (count > 1) {
            fault(line, key, "", "stands there " + count + " times", "Keep one of them");
        } else if (count == 0 && required) {
            fault(line, key, "", "is missing", "Add a column " + String.join(" or ", allowed));
        }
    }

    private String allHeaders() {
        return Stream.concat(Stream.of(keyColumn), columns.stream().flatMap(TableColumn::headers))
                .collect(Collectors.joining(", "));
    }

    private void row(List<String> header, CSVRecord row, int line) {
        if (row.size() != header.size()) {
            fault(
                    line,
                    "",
                    "",
                    "has " + row.size() + " fields, the header " + header.size(),
                    "Write as many as in the header");
            return;
        }
        @Nullable K key = null;
        Map<C, Double> values = new HashMap<>();
        int before = faults.size();
        for (int i = 0; i < header.size(); i++) {
            Optional<C> column = column(header.get(i));
            if (column.isEmpty()) {
                key = key(line, row.get(i));
            } else {
                value(line, column.get(), header.get(i), row.get(i)).ifPresent(v -> values.put(column.get(), v));
            }
        }
        if (faults.size() == before && key != null) {
            row(line, header, key, values);
        }
    }

    private Optional<Double> value(int line, C column, String header, String text) {
        if (text.isEmpty() && !column.required()) {
            return Optional.empty();
        }
        if (!NUMBER.matcher(text).matches()) {
            fault(line, header, text, "is not a number", "Write a number such as 12.5, with a point");
            return Optional.empty();
        }
        double value = column.unitIn(header).orElseThrow().metric(Double.parseDouble(text));
        if (value < column.least() || value > column.most()) {
            String range = "%.0f to %.0f in %s".formatted(column.least(), column.most(), column.header());
            fault(line, header, text, "is out of range", "Write what is from " + range);
            return Optional.empty();
        }
        return Optional.of(value);
    }

    /** The name a column has in this header. */
    static String written(List<String> header, TableColumn column) {
        return header.stream()
                .filter(h -> column.unitIn(h).isPresent())
                .findFirst()
                .orElseThrow();
    }
}
