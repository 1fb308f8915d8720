package org.firmset.season.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.firmset.measure.Cash;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.jspecify.annotations.Nullable;

/** Says in words what two plans differ in: for pages and the terminal alike. */
public final class SideBySideWords {
    private final SideBySide plans;
    private final SeasonReport first;
    private final SeasonReport second;

    public SideBySideWords(SideBySide plans) {
        this.plans = plans;
        first = plans.first().report();
        second = plans.second().report();
    }

    /** What the second plan costs and gains against the first, in one sentence. */
    public String price() {
        List<String> parts = new ArrayList<>();
        int all = plans.kept().size() + plans.moved().size();
        parts.add("keeps %d of %d stages where they were".formatted(plans.kept().size(), all));
        for (SideBySide.Finish finish : plans.finishes()) {
            if (finish.days().isPresent() && finish.days().getAsLong() != 0) {
                parts.add(finish.name() + " finishes " + days(finish.days().getAsLong()));
            }
        }
        if (first.tripCount() != second.tripCount()) {
            parts.add(count(second.tripCount() - first.tripCount(), "trip"));
        }
        cents().stream().filter(c -> c != 0).mapToObj(this::money).forEach(parts::add);
        String name = plans.second().name();
        // "At most $900.00 a month, whatever it takes, keeps ..."
        return "%s%s %s.".formatted(name, name.contains(",") ? "," : "", String.join("; ", parts));
    }

    /** Finishes, sums and the stages that moved, in this order. */
    public List<WordTable> tables() {
        return List.of(finishes(), sums(), stages());
    }

    private WordTable finishes() {
        return new WordTable(
                "Finishes",
                headings("Subproject", "Trips with work for it"),
                plans.finishes().stream()
                        .map(f -> List.of(
                                f.name(),
                                date(f.first()),
                                date(f.second()),
                                f.days().isPresent() ? days(f.days().getAsLong()) : WordTable.NONE,
                                f.tripsFirst() == f.tripsSecond()
                                        ? f.tripsFirst() + " in both"
                                        : "%d, then %d".formatted(f.tripsFirst(), f.tripsSecond())))
                        .toList());
    }

    private List<String> headings(String what, String... more) {
        List<String> result = new ArrayList<>(
                List.of(what, plans.first().name(), plans.second().name(), "Difference"));
        result.addAll(List.of(more));
        return result;
    }

    private WordTable sums() {
        return new WordTable(
                "In all",
                headings("What"),
                List.of(
                        List.of(
                                "Trips",
                                Integer.toString(first.tripCount()),
                                Integer.toString(second.tripCount()),
                                count(second.tripCount() - first.tripCount(), "trip")),
                        List.of(
                                "Runs with materials",
                                Integer.toString(first.runCount()),
                                Integer.toString(second.runCount()),
                                count(second.runCount() - first.runCount(), "run")),
                        List.of(
                                "Still to spend",
                                total(first),
                                total(second),
                                cents().isPresent() ? money(cents().getAsLong()) : WordTable.NONE)));
    }

    private WordTable stages() {
        List<List<String>> rows = new ArrayList<>();
        for (SideBySide.Moved stage : plans.moved()) {
            rows.add(List.of(
                    (rows.size() + 1) + " " + stage.name(),
                    dates(stage.first()),
                    dates(stage.second()),
                    difference(stage)));
        }
        return new WordTable("Stages that moved", headings("Stage"), rows);
    }

    /** How a stage moved: 'new', 'gone', or which way and by how many days. */
    public static String difference(SideBySide.Moved stage) {
        if (stage.first() == null) {
            return "new";
        }
        if (stage.second() == null) {
            return "gone";
        }
        long start = stage.startDays().orElseThrow();
        long finish = stage.finishDays().orElseThrow();
        return start == finish
                ? days(start)
                : start == 0
                        ? "done " + days(finish)
                        : finish == 0 ? "starts " + days(start) : "starts " + days(start) + ", done " + days(finish);
    }

    /** Which trips only one of the plans makes; two sentences at most. */
    public List<String> trips() {
        List<String> result = new ArrayList<>();
        only(plans.first().name(), plans.tripsOfFirstOnly()).ifPresent(result::add);
        only(plans.second().name(), plans.tripsOfSecondOnly()).ifPresent(result::add);
        return result.isEmpty() ? List.of("Both make the same trips.") : result;
    }

    private static Optional<String> only(String name, List<SeasonReport.TripPart> trips) {
        return trips.isEmpty()
                ? Optional.empty()
                : Optional.of("Trips made only in '%s': %s."
                        .formatted(
                                name,
                                trips.stream()
                                        .map(t -> Dates.span(t.firstDate(), t.lastDate()))
                                        .collect(Collectors.joining(", "))));
    }

    /** Names of the stages that did not move. */
    public List<String> kept() {
        return plans.kept().stream()
                .map(key -> second.stage(key).orElseThrow().name())
                .toList();
    }

    /** '7 days later', '1 day earlier', 'the same day'. */
    static String days(long days) {
        return days == 0
                ? "the same day"
                : Math.abs(days) + (Math.abs(days) == 1 ? " day " : " days ") + (days > 0 ? "later" : "earlier");
    }

    private static String count(int more, String what) {
        return more == 0
                ? "as many"
                : Math.abs(more) + " " + what + (Math.abs(more) == 1 ? "" : "s") + (more > 0 ? " more" : " fewer");
    }

    /** What the second plan costs more, in hundredths; empty when the two count in different currencies. */
    private OptionalLong cents() {
        var was = first.costs().total();
        var is = second.costs().total();
        return was.getCurrency().equals(is.getCurrency())
                ? OptionalLong.of(Cash.cents(is) - Cash.cents(was))
                : OptionalLong.empty();
    }

    private String money(long cents) {
        return cents == 0
                ? "as much"
                : Cash.show(
                                Math.abs(cents),
                                second.costs().total().getCurrency().getCurrencyCode())
                        + (cents > 0 ? " more" : " less");
    }

    private static String total(SeasonReport report) {
        return Cash.show(
                Cash.cents(report.costs().total()),
                report.costs().total().getCurrency().getCurrencyCode());
    }

    private static String date(@Nullable LocalDate date) {
        return date == null ? WordTable.NONE : Dates.date(date);
    }

    /** A stage and where one of the plans has it. */
    public static String stage(SideBySide.Moved stage, SideBySide.Span span) {
        return stage.name() + ": " + dates(span);
    }

    private static String dates(SideBySide.@Nullable Span span) {
        return span == null
                ? WordTable.NONE
                : span.start().equals(span.finish())
                        ? Dates.day(span.start())
                        : Dates.day(span.start()) + " to " + Dates.day(span.finish());
    }
}
