package org.firmset.season.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Generator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.season.day.DayOutlook.Asked;
import org.firmset.season.day.DayOutlook.Work;
import org.firmset.season.result.SeasonReport;
import org.jspecify.annotations.Nullable;

/** The site days of a plan, as their outlooks are asked for. */
public final class PlannedDays {
    private PlannedDays() {}

    /**
     * The days of the trip that a date belongs to, from its first one to the date. Without such a trip the date alone, with no
     * work. @param people for a date without a trip
     */
    public static List<Asked> upTo(SeasonReport report, Homestead homestead, LocalDate date, int people) {
        return trip(report, date)
                .map(t -> t.days().stream()
                        .filter(d -> !d.date().isAfter(date))
                        .map(d -> asked(d, homestead))
                        .toList())
                .filter(days -> !days.isEmpty() && days.getLast().date().equals(date))
                .orElseGet(() -> List.of(new Asked(date, List.of(), people, 0)));
    }

    /** The trip of the plan that a date belongs to. */
    public static Optional<SeasonReport.TripPart> trip(SeasonReport report, LocalDate date) {
        return report.madeTrips().stream()
                .filter(t -> !date.isBefore(t.firstDate()) && !date.isAfter(t.lastDate()))
                .findFirst();
    }

    /** All dates of trips that are made, in order. */
    public static List<LocalDate> dates(SeasonReport report) {
        return report.madeTrips().stream()
                .flatMap(t -> t.days().stream())
                .map(SeasonReport.DayPart::date)
                .toList();
    }

    private static Asked asked(SeasonReport.DayPart day, Homestead homestead) {
        return new Asked(
                day.date(),
                day.work().stream()
                        .filter(w -> isThere(w.stage(), homestead))
                        .map(w -> new Work(w.stage(), w.labour()))
                        .toList(),
                Math.max(1, day.people()),
                generatorMinutes(day, homestead.power()));
    }

    /** A plan may be older than the homestead while the next one is being made. */
    private static boolean isThere(String stage, Homestead homestead) {
        return homestead.stages().stream().anyMatch(s -> s.key().equals(stage));
    }

    /** As long as it takes to give what the plan counts on. */
    private static int generatorMinutes(SeasonReport.DayPart day, @Nullable PowerKit kit) {
        @Nullable Generator generator = kit == null ? null : kit.generator();
        return generator == null
                ? 0
                : (int) Math.ceil(day.generatorWattHours()
                        * 60.0
                        / generator.power().value().doubleValue());
    }
}
