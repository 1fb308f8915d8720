package org.firmset.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.firmset.homestead.Cautions;
import org.firmset.measure.Cash;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.plan.RunKind;
import org.firmset.season.result.Proof;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Prints a season plan as plain text, trip by trip. */
final class PlanPrinter {
    private final SeasonReport report;
    private final UnitSystem units;
    private final StringBuilder text = new StringBuilder();

    PlanPrinter(SeasonReport report, UnitSystem units) {
        this.report = report;
        this.units = units;
    }

    String text() {
        heading();
        report.madeTrips().forEach(this::trip);
        cautions();
        criticalPaths();
        slack();
        return text.toString();
    }

    private void line(String format, @Nullable Object... arguments) {
        text.append(String.format(Locale.ROOT, format, arguments).stripTrailing())
                .append('\n');
    }

    private void heading() {
        line("%s, season plan on %s", report.homestead(), Dates.date(report.statusDate()));
        line(
                "%s, %s, %s",
                plural(report.tripCount(), "trip"),
                plural(report.runCount(), "run"),
                money(report.costs().total()));
        line(
                "  trips %s, extra runs %s, deliveries %s, generator %s, materials %s",
                money(report.costs().trips()),
                money(report.costs().extraRuns()),
                money(report.costs().deliveries()),
                money(report.costs().generator()),
                money(report.costs().materials()));
        line("%s", Proof.of(report));
        Proof.withoutSolver().ifPresent(said -> line("%s", said));
        line(
                "Proven: no plan needs fewer than %d trips or less than %s.",
                report.best().trips(), money(report.best().money()));
        if (!report.withoutPrice().isEmpty()) {
            line("No price is known for %s: counted as free.", String.join(", ", report.withoutPrice()));
        }
        for (SeasonReport.Part part : report.subprojects()) {
            subproject(part);
        }
    }

    private void subproject(SeasonReport.Part part) {
        if (part.finish() == null) {
            line("  %s: no stages", part.name());
            return;
        }
        String bound = part.notSooner() == null ? "done" : "no plan can finish before " + Dates.day(part.notSooner());
        String target = part.target() == null ? "" : ", hoped for " + Dates.day(part.target());
        line("  %s: finished %s (%s%s)", part.name(), Dates.date(part.finish()), bound, target);
    }

    private void trip(SeasonReport.TripPart trip) {
        line("");
        String power = trip.batteryLowPercent() == null
                ? ""
                : ", battery down to " + trip.batteryLowPercent() + " % of what may be used";
        line(
                "TRIP %d  %s to %s, %s%s",
                trip.number(), Dates.day(trip.firstDate()), Dates.date(trip.lastDate()), money(trip.cost()), power);
        trip.ready().forEach(r -> line("  ready: %s", r));
        trip.water().forEach(w -> line("  water: %s", w));
        trip.runs().forEach(this::run);
        trip.days().forEach(this::day);
    }

    private void run(SeasonReport.RunPart run) {
        String what = switch (run.kind()) {
            case ARRIVAL -> "load";
            case EXTRA -> "extra run";
            case DELIVERY -> "delivery";
        };
        line(
                "  %s: %s, %s; %s %s of %s (%d %%)",
                what,
                run.carrier(),
                Units.show(run.mass(), units),
                run.nearestLimit(),
                Units.show(run.limitUsed(), units),
                Units.show(run.limit(), units),
                run.usedPercent());
        for (SeasonReport.LoadPart load : run.loads()) {
            line(
                    "    %d x %s, %s, %s%s",
                    load.packs(),
                    load.name(),
                    load.pack(),
                    Units.show(load.mass(), units),
                    run.kind() == RunKind.DELIVERY ? "" : ", in " + load.place());
        }
        run.notes().forEach(note -> line("    note: %s", note));
    }

    private void day(SeasonReport.DayPart day) {
        String power = day.wattHours() == 0
                ? ""
                : String.format(Locale.ROOT, ", %,d Wh", day.wattHours())
                        + (day.generatorWattHours() == 0
                                ? ""
                                : String.format(Locale.ROOT, " of which generator %,d", day.generatorWattHours()));
        line(
                "  %s: %s of %s labour, %s%s",
                Dates.day(day.date()),
                day.used(),
                day.usable(),
                day.people() == 1 ? "1 person" : day.people() + " people",
                power);
        for (SeasonReport.WorkPart work : day.work()) {
            String part = work.blocks() == 1
                    ? ""
                    : ", part " + work.block() + " of " + work.blocks() + (work.finishes() ? ", finishes" : "");
            String odds = work.weatherPercent() == null ? "" : ", weather fit on " + work.weatherPercent() + " %";
            line("    %s: %s, %s%s%s", work.subproject(), work.name(), work.labour(), part, odds);
            if (work.powerNote() != null) {
                line("      %s", work.powerNote());
            }
        }
    }

    private void cautions() {
        if (report.madeTrips().stream().anyMatch(t -> !t.water().isEmpty())) {
            line("");
            line("%s", Cautions.WATER);
        }
    }

    private void criticalPaths() {
        for (SeasonReport.PathPart path : report.criticalPaths()) {
            line("");
            line("CRITICAL PATH of %s", subprojectName(path.subproject()));
            path.story().forEach(sentence -> line("  %s", sentence));
        }
    }

    private String subprojectName(String key) {
        return report.subprojects().stream()
                .filter(p -> p.key().equals(key))
                .map(SeasonReport.Part::name)
                .findFirst()
                .orElse(key);
    }

    private void slack() {
        List<SeasonReport.StagePart> open = report.stages().stream()
                .filter(s -> s.state() != SeasonReport.State.DONE)
                .toList();
        line("");
        line("STAGES: slack, and why not sooner");
        int longest = open.stream().mapToInt(s -> s.name().length()).max().orElse(0);
        for (SeasonReport.StagePart stage : open) {
            line(
                    "  %-" + Math.max(1, longest) + "s  %s  %s  %s",
                    stage.name(),
                    Dates.day(stage.start()),
                    slack(stage),
                    stage.whyNotSooner());
        }
        String notMade = report.trips().stream()
                .filter(t -> !t.made())
                .map(t -> Dates.span(t.firstDate(), t.lastDate()))
                .collect(Collectors.joining(", "));
        if (!notMade.isEmpty()) {
            line("");
            line("Open dates not used: %s", notMade);
        }
    }

    private static String slack(SeasonReport.StagePart stage) {
        return stage.slackDays() == 0
                ? "no slack"
                : "slack " + plural(stage.slackDays(), "day") + ", " + plural(stage.slackTrips(), "trip") + ";";
    }

    private static String plural(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private static String money(Money money) {
        return Cash.show(Cash.cents(money), money.getCurrency().getCurrencyCode());
    }
}
