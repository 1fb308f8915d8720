package org.firmset.trade.climate;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** Reads one table of monthly normals and collects what is wrong with it. */
final class ClimateReader {
    private static final int MOST_FAULTS = 50;
    /** Twelve lines of seven numbers are far shorter; a hostile text is refused unread. */
    private static final int LONGEST = 20_000;

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,6}(\\.\\d{1,20})?");
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    private final List<TableFault> faults = new ArrayList<>();
    private final Map<Month, MonthClimate> months = new EnumMap<>(Month.class);
    private final Set<Month> seen = new HashSet<>();

    ClimateTable.Read read(String text) {
        if (text.length() > LONGEST) {
            fault(0, "", "", "is longer than 20,000 characters", "Write a header and twelve lines");
            return result();
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
            return result();
        }
        missing();
        return result();
    }

    private ClimateTable.Read result() {
        if (!faults.isEmpty()) {
            return new ClimateTable.Read(
                    null, faults.stream().limit(MOST_FAULTS).toList());
        }
        return new ClimateTable.Read(new YearClimate(List.copyOf(months.values())), List.of());
    }

    /** The names of the columns; none when lines cannot be read by them. */
    private List<String> header(CSVRecord row, int line) {
        List<String> names = row.toList();
        int before = faults.size();
        for (String name : names) {
            if (!name.equals(ClimateTable.MONTH) && ClimateColumn.of(name).isEmpty()) {
                fault(line, name, "", "is not a column of this table", "Write one of " + allHeaders());
            }
        }
        once(line, names, ClimateTable.MONTH, Stream.of(ClimateTable.MONTH), true);
        for (ClimateColumn column : ClimateColumn.values()) {
            once(line, names, column.key(), column.headers(), column.required());
        }
        return faults.size() > before ? List.of() : names;
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

    private static String allHeaders() {
        return Stream.concat(
                        Stream.of(ClimateTable.MONTH),
                        Stream.of(ClimateColumn.values()).flatMap(ClimateColumn::headers))
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
        @Nullable Month month = null;
        Map<ClimateColumn, Double> values = new EnumMap<>(ClimateColumn.class);
        int before = faults.size();
        for (int i = 0; i < header.size(); i++) {
            Optional<ClimateColumn.Use> use = ClimateColumn.of(header.get(i));
            if (use.isEmpty()) {
                month = month(line, row.get(i));
            } else {
                value(line, use.get(), row.get(i), values);
            }
        }
        if (faults.size() == before && month != null) {
            month(line, header, month, values);
        }
    }

    private @Nullable Month month(int line, String text) {
        if (!text.matches("0?[1-9]|1[0-2]")) {
            fault(line, ClimateTable.MONTH, text, "is not a month", "Write 1 for January to 12 for December");
            return null;
        }
        Month month = Month.of(Integer.parseInt(text));
        if (!seen.add(month)) {
            fault(line, ClimateTable.MONTH, text, "stands there twice", "Keep one line for each month");
            return null;
        }
        return month;
    }

    private void value(int line, ClimateColumn.Use use, String text, Map<ClimateColumn, Double> values) {
        ClimateColumn column = use.column();
        if (text.isEmpty() && !column.required()) {
            return;
        }
        if (!NUMBER.matcher(text).matches()) {
            fault(line, use.header(), text, "is not a number", "Write a number such as 12.5, with a point");
            return;
        }
        double value = use.metric(Double.parseDouble(text));
        if (value < column.least() || value > column.most()) {
            String range = "%.0f to %.0f in %s".formatted(column.least(), column.most(), column.header());
            fault(line, use.header(), text, "is out of range", "Write what is from " + range);
            return;
        }
        values.put(column, value);
    }

    private void month(int line, List<String> header, Month month, Map<ClimateColumn, Double> values) {
        double high = Objects.requireNonNull(values.get(ClimateColumn.HIGH));
        double low = Objects.requireNonNull(values.get(ClimateColumn.LOW));
        double wetDays = Objects.requireNonNull(values.get(ClimateColumn.WET_DAYS));
        double sun = Objects.requireNonNull(values.get(ClimateColumn.SUN));
        if (high < low) {
            String column = header.stream()
                    .filter(h -> h.startsWith(ClimateColumn.HIGH.key()))
                    .findFirst()
                    .orElseThrow();
            fault(line, column, "", "is under the low of the month", "Swap them, or look at their signs");
            return;
        }
        if (wetDays > WetDays.daysIn(month)) {
            String most = "" + WetDays.daysIn(month);
            fault(
                    line,
                    ClimateColumn.WET_DAYS.key(),
                    "" + wetDays,
                    "is over the " + most + " days of the month",
                    "Write at most " + most);
            return;
        }
        months.put(
                month,
                new MonthClimate(
                        high, low, wetDays, sun, values.get(ClimateColumn.RAIN), values.get(ClimateColumn.WIND)));
    }

    private void missing() {
        String left = Stream.of(Month.values())
                .filter(m -> !seen.contains(m))
                .map(m -> "" + m.getValue())
                .collect(Collectors.joining(", "));
        boolean linesWereRead = faults.stream().noneMatch(f -> f.line() == 1);
        if (linesWereRead && !left.isEmpty()) {
            fault(0, ClimateTable.MONTH, left, "is missing", "Add a line for every month");
        }
    }

    private void fault(int line, String column, String value, String problem, String remedy) {
        faults.add(new TableFault(line, column, value, problem, remedy));
    }
}
