package org.firmset.trade.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A forecast for days without a gap, in the order of dates. Ask {@link #faults} before making one of what people wrote.
 *
 * @param days none for no forecast
 */
public record Forecast(List<ForecastDay> days) {
    public static final Forecast NONE = new Forecast(List.of());

    public Forecast {
        List<TableFault> faults = faults(days);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.getFirst().text());
        }
        days = sorted(days);
    }

    /** Dates that are there twice, and dates left out between two others; a line is a day's number in the list, from 1. */
    public static List<TableFault> faults(List<ForecastDay> days) {
        List<TableFault> faults = new ArrayList<>();
        List<ForecastDay> sorted = sorted(days);
        for (int i = 1; i < sorted.size(); i++) {
            LocalDate before = sorted.get(i - 1).date();
            LocalDate date = sorted.get(i).date();
            // the later of equal dates in the list as it was written
            int line = days.lastIndexOf(sorted.get(i)) + 1;
            if (date.equals(before)) {
                faults.add(fault(line, date, "stands there twice", "Keep one line for each date"));
            } else if (!date.equals(before.plusDays(1))) {
                String gap = before.plusDays(1) + " to " + date.minusDays(1);
                faults.add(fault(line, date, "comes after a gap", "Add " + gap + " or leave out the days behind it"));
            }
        }
        return faults;
    }

    public Optional<ForecastDay> on(LocalDate date) {
        return days.stream().filter(d -> d.date().equals(date)).findFirst();
    }

    private static TableFault fault(int line, LocalDate date, String problem, String remedy) {
        return new TableFault(line, "date", date.toString(), problem, remedy);
    }

    private static List<ForecastDay> sorted(List<ForecastDay> days) {
        return days.stream().sorted(Comparator.comparing(ForecastDay::date)).toList();
    }
}
