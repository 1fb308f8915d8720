package org.firmset.season.ui;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.plan.RunKind;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;

/** Writes a season plan for the board. */
final class BoardWriter {
    private final SeasonReport report;
    private final UnitSystem units;
    private final long dearestTrip;

    private BoardWriter(SeasonReport report, UnitSystem units) {
        this.report = report;
        this.units = units;
        dearestTrip = report.trips().stream()
                .mapToLong(t -> Cash.cents(t.cost()))
                .max()
                .orElse(0);
    }

    static BoardData write(SeasonReport report, UnitSystem units) {
        BoardWriter writer = new BoardWriter(report, units);
        return new BoardData(
                report.statusDate().toString(),
                Dates.date(report.statusDate()),
                report.trips().stream().map(writer::trip).toList(),
                report.subprojects().stream().map(writer::lane).toList(),
                report.waits().stream().map(BoardWriter::wait).toList(),
                writer.summary());
    }

    private String summary() {
        return report.finish() == null
                ? "Nothing is left to plan."
                : "Finished %s with %d trips.".formatted(Dates.date(report.finish()), report.tripCount());
    }

    private BoardData.BoardTrip trip(SeasonReport.TripPart trip) {
        return new BoardData.BoardTrip(
                trip.key(),
                trip.made() ? trip.number() : null,
                trip.made(),
                trip.made() ? "Trip " + trip.number() : "open",
                Dates.span(trip.firstDate(), trip.lastDate()),
                trip.firstDate().toString(),
                trip.lastDate().toString(),
                trip.days().stream()
                        .map(d -> new BoardData.Day(
                                d.date().toString(), Dates.weekday(d.date()), hours(d.used()), hours(d.usable())))
                        .toList(),
                trip.made() ? mass(trip).orElse(null) : null,
                trip.made() && trip.batteryLowPercent() != null ? battery(trip.batteryLowPercent()) : null,
                trip.made() ? hours(trip) : null,
                trip.made() ? money(trip) : null);
    }

    private static double hours(Hours hours) {
        return hours.quarters() / 4.0;
    }

    /** Of the fullest run with the own vehicle. */
    private Optional<BoardData.Use> mass(SeasonReport.TripPart trip) {
        return trip.runs().stream()
                .filter(r -> r.kind() != RunKind.DELIVERY)
                .max(Comparator.comparingInt(SeasonReport.RunPart::usedPercent))
                .map(r -> new BoardData.Use(
                        r.limitUsed().value().doubleValue(),
                        r.limit().value().doubleValue(),
                        Units.show(r.limitUsed(), units) + " of " + Units.show(r.limit(), units)));
    }

    private static BoardData.Battery battery(int percent) {
        return new BoardData.Battery(percent / 100.0, "low point " + percent + " %");
    }

    private static BoardData.Use hours(SeasonReport.TripPart trip) {
        double used = trip.days().stream().mapToDouble(d -> hours(d.used())).sum();
        double usable = trip.days().stream().mapToDouble(d -> hours(d.usable())).sum();
        return new BoardData.Use(used, usable, number(used) + " of " + number(usable) + " h");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }

    private BoardData.Share money(SeasonReport.TripPart trip) {
        long cents = Cash.cents(trip.cost());
        String currency = trip.cost().getCurrency().getCurrencyCode();
        return new BoardData.Share(dearestTrip == 0 ? 0 : cents / (double) dearestTrip, Cash.show(cents, currency));
    }

    private BoardData.Lane lane(SeasonReport.Part part) {
        return new BoardData.Lane(
                part.key(),
                part.name(),
                part.finish() == null ? "no stages yet" : "finished " + Dates.day(part.finish()),
                report.stages().stream()
                        .filter(s -> s.subproject().equals(part.key()))
                        .map(this::stage)
                        .toList());
    }

    private BoardData.LaneStage stage(SeasonReport.StagePart stage) {
        List<BoardData.Block> blocks = report.trips().stream()
                .flatMap(t -> t.days().stream())
                .flatMap(d -> d.work().stream()
                        .filter(w -> w.stage().equals(stage.key()))
                        .map(w -> new BoardData.Block(d.date().toString(), hours(w.labour()))))
                .toList();
        return new BoardData.LaneStage(
                stage.key(),
                stage.name(),
                blocks,
                stage.critical(),
                state(stage.state()),
                slack(stage),
                label(stage, blocks));
    }

    private static String state(SeasonReport.State state) {
        return switch (state) {
            case DONE -> "done";
            case PINNED -> "pinned";
            case BEGUN, PLANNED -> "planned";
        };
    }

    static String slack(SeasonReport.StagePart stage) {
        if (stage.state() == SeasonReport.State.DONE) {
            return "done";
        }
        return stage.slackDays() == 0
                ? "no slack"
                : "slack " + plural(stage.slackDays(), "day") + ", " + plural(stage.slackTrips(), "trip");
    }

    private static String plural(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private static String label(SeasonReport.StagePart stage, List<BoardData.Block> blocks) {
        if (stage.state() == SeasonReport.State.DONE) {
            return stage.name() + ", done " + Dates.day(stage.finish());
        }
        String when = blocks.stream()
                .map(b -> number(b.hours()) + " hours on " + Dates.day(java.time.LocalDate.parse(b.date())))
                .collect(Collectors.joining(" and "));
        return stage.name() + ", " + when + ", " + slack(stage) + (stage.critical() ? ", on the critical path" : "");
    }

    private static BoardData.BoardWait wait(SeasonReport.WaitPart wait) {
        return new BoardData.BoardWait(
                wait.key(),
                wait.kind().name().toLowerCase(Locale.ROOT),
                wait.name(),
                wait.from(),
                wait.to(),
                wait.begins().toString(),
                wait.ready().toString(),
                "ready " + Dates.day(wait.ready()),
                wait.critical());
    }
}
