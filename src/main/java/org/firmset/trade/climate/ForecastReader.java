package org.firmset.trade.climate;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads one table of forecast days. */
final class ForecastReader extends TableReader<LocalDate, ForecastColumn> {
    private final LocalDate today;
    private final List<ForecastDay> days = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();

    ForecastReader(LocalDate today) {
        super(ForecastTable.DATE, List.of(ForecastColumn.values()));
        this.today = today;
    }

    ForecastTable.Read read(String text) {
        readText(text, "a header and a line for each day");
        return faults().isEmpty()
                ? new ForecastTable.Read(new Forecast(days), List.of())
                : new ForecastTable.Read(null, faults());
    }

    @Override
    @Nullable
    LocalDate key(int line, String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (!date.isBefore(today)) {
                return date;
            }
            fault(line, ForecastTable.DATE, text, "is past", "Leave out the days before " + today);
        } catch (DateTimeException e) {
            fault(line, ForecastTable.DATE, text, "is not a date", "Write it as 2027-05-01");
        }
        return null;
    }

    @Override
    void row(int line, List<String> header, LocalDate date, Map<ForecastColumn, Double> values) {
        double high = Objects.requireNonNull(values.get(ForecastColumn.HIGH));
        double low = Objects.requireNonNull(values.get(ForecastColumn.LOW));
        double wet = Objects.requireNonNull(values.get(ForecastColumn.WET));
        if (high < low) {
            fault(
                    line,
                    written(header, ForecastColumn.HIGH),
                    "",
                    "is under the low of the day",
                    "Swap them, or look at their signs");
        } else if (wet != Math.rint(wet)) {
            fault(line, ForecastColumn.WET.key(), "" + wet, "is not a whole number", "Write a number such as 30");
        } else {
            lines.add(line);
            days.add(new ForecastDay(
                    date, high, low, (int) wet, values.get(ForecastColumn.WIND), values.get(ForecastColumn.SUN)));
        }
    }

    @Override
    void end() {
        if (!faults().isEmpty()) {
            // a line that could not be read would look like a gap
            return;
        }
        if (days.isEmpty()) {
            fault(0, ForecastTable.DATE, "", "holds no day", "Add a line for each day");
        }
        Forecast.faults(days)
                .forEach(f -> fault(lines.get(f.line() - 1), f.column(), f.value(), f.problem(), f.remedy()));
    }
}
