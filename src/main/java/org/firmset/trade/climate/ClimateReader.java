package org.firmset.trade.climate;

import java.time.Month;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads one table of monthly normals. */
final class ClimateReader extends TableReader<Month, ClimateColumn> {
    private final Map<Month, MonthClimate> months = new EnumMap<>(Month.class);
    private final Set<Month> seen = new HashSet<>();

    ClimateReader() {
        super(ClimateTable.MONTH, List.of(ClimateColumn.values()));
    }

    ClimateTable.Read read(String text) {
        readText(text, "a header and twelve lines");
        return faults().isEmpty()
                ? new ClimateTable.Read(new YearClimate(List.copyOf(months.values())), List.of())
                : new ClimateTable.Read(null, faults());
    }

    @Override
    @Nullable
    Month key(int line, String text) {
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

    @Override
    void row(int line, List<String> header, Month month, Map<ClimateColumn, Double> values) {
        double high = Objects.requireNonNull(values.get(ClimateColumn.HIGH));
        double low = Objects.requireNonNull(values.get(ClimateColumn.LOW));
        double wetDays = Objects.requireNonNull(values.get(ClimateColumn.WET_DAYS));
        double sun = Objects.requireNonNull(values.get(ClimateColumn.SUN));
        if (high < low) {
            fault(
                    line,
                    written(header, ClimateColumn.HIGH),
                    "",
                    "is under the low of the month",
                    "Swap them, or look at their signs");
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

    @Override
    void end() {
        String left = Stream.of(Month.values())
                .filter(m -> !seen.contains(m))
                .map(m -> "" + m.getValue())
                .collect(Collectors.joining(", "));
        boolean linesWereRead = faults().stream().noneMatch(f -> f.line() == 1);
        if (linesWereRead && !left.isEmpty()) {
            fault(0, ClimateTable.MONTH, left, "is missing", "Add a line for every month");
        }
    }
}
