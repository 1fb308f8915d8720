package org.firmset.season.ask;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.season.result.SeasonReport;
import org.jspecify.annotations.Nullable;

/**
 * Two plans of one homestead side by side. Of a stage its start and finish are compared; how the work lies between them is
 * not.
 *
 * @param first one plan with what it is called beside the other
 * @param finishes one for each subproject of either plan that has stages, as listed by the owners
 * @param moved stages that start or finish on another date, are new or are gone; by subproject, then the earliest first
 * @param kept keys of the stages that lie where they lay; what was done already in the second plan is not counted
 */
public record SideBySide(Named first, Named second, List<Finish> finishes, List<Moved> moved, List<String> kept) {
    public SideBySide {
        finishes = List.copyOf(finishes);
        moved = List.copyOf(moved);
        kept = List.copyOf(kept);
    }

    /** A plan and what it is called. */
    public record Named(String name, SeasonReport report) {}

    /** First and last date of the work on a stage. */
    public record Span(LocalDate start, LocalDate finish) {}

    /**
     * The finish of a subproject in both plans.
     *
     * @param first null when it has no stages in the first plan
     * @param second null when it has none in the second
     * @param tripsFirst trips of the first plan with work for it
     */
    public record Finish(
            String key,
            String name,
            @Nullable LocalDate first,
            @Nullable LocalDate second,
            int tripsFirst,
            int tripsSecond) {

        /** Calendar days by which the second is later, below zero for earlier; empty when one plan does not have it. */
        public OptionalLong days() {
            return first == null || second == null
                    ? OptionalLong.empty()
                    : OptionalLong.of(ChronoUnit.DAYS.between(first, second));
        }
    }

    /**
     * A stage that lies elsewhere.
     *
     * @param subproject its key
     * @param first null for a stage that is new in the second plan
     * @param second null for one that is gone
     */
    public record Moved(
            String key,
            String name,
            String subproject,
            @Nullable Span first,
            @Nullable Span second) {

        /** Calendar days by which it starts later, below zero for earlier; empty for one that is new or gone. */
        public OptionalLong startDays() {
            return first == null || second == null
                    ? OptionalLong.empty()
                    : OptionalLong.of(ChronoUnit.DAYS.between(first.start(), second.start()));
        }

        /** The same of its finish. */
        public OptionalLong finishDays() {
            return first == null || second == null
                    ? OptionalLong.empty()
                    : OptionalLong.of(ChronoUnit.DAYS.between(first.finish(), second.finish()));
        }

        /** The first date on which either plan works on it. */
        LocalDate earliest() {
            return Stream.of(Optional.ofNullable(first), Optional.ofNullable(second))
                    .flatMap(Optional::stream)
                    .map(Span::start)
                    .min(LocalDate::compareTo)
                    .orElseThrow();
        }
    }

    /** Trips that are made in the first plan and not in the second, in order. */
    public List<SeasonReport.TripPart> tripsOfFirstOnly() {
        return without(first.report(), second.report());
    }

    /** Trips that are made in the second plan and not in the first, in order. */
    public List<SeasonReport.TripPart> tripsOfSecondOnly() {
        return without(second.report(), first.report());
    }

    private static List<SeasonReport.TripPart> without(SeasonReport report, SeasonReport other) {
        Set<String> made =
                other.madeTrips().stream().map(SeasonReport.TripPart::key).collect(Collectors.toSet());
        return report.madeTrips().stream().filter(t -> !made.contains(t.key())).toList();
    }

    public static SideBySide of(Named first, Named second) {
        SeasonReport was = first.report();
        SeasonReport is = second.report();
        List<String> kept = new ArrayList<>();
        List<Moved> moved = new ArrayList<>();
        for (String key : keys(was, is)) {
            Optional<SeasonReport.StagePart> before = was.stage(key);
            Optional<SeasonReport.StagePart> after = is.stage(key);
            Moved move = move(before, after);
            if (before.isEmpty() || after.isEmpty() || !span(before.get()).equals(span(after.get()))) {
                moved.add(move);
            } else if (after.get().state() != SeasonReport.State.DONE) {
                kept.add(key);
            }
        }
        List<String> lanes =
                subprojects(was, is).map(SeasonReport.Part::key).distinct().toList();
        moved.sort((a, b) -> a.subproject().equals(b.subproject())
                ? a.earliest().compareTo(b.earliest())
                : Integer.compare(lanes.indexOf(a.subproject()), lanes.indexOf(b.subproject())));
        return new SideBySide(first, second, finishes(was, is), moved, kept);
    }

    private static List<String> keys(SeasonReport was, SeasonReport is) {
        return Stream.concat(is.stages().stream(), was.stages().stream())
                .map(SeasonReport.StagePart::key)
                .distinct()
                .toList();
    }

    /** As the second plan lists them, then those that only the first has. */
    private static Stream<SeasonReport.Part> subprojects(SeasonReport was, SeasonReport is) {
        return Stream.concat(is.subprojects().stream(), was.subprojects().stream());
    }

    private static Moved move(Optional<SeasonReport.StagePart> was, Optional<SeasonReport.StagePart> is) {
        SeasonReport.StagePart known = is.or(() -> was).orElseThrow();
        return new Moved(
                known.key(),
                known.name(),
                known.subproject(),
                was.map(SideBySide::span).orElse(null),
                is.map(SideBySide::span).orElse(null));
    }

    private static Span span(SeasonReport.StagePart stage) {
        return new Span(stage.start(), stage.finish());
    }

    private static List<Finish> finishes(SeasonReport was, SeasonReport is) {
        Set<String> seen = new TreeSet<>();
        return subprojects(was, is)
                .filter(p -> seen.add(p.key()))
                .map(p -> new Finish(
                        p.key(),
                        p.name(),
                        finish(was, p.key()),
                        finish(is, p.key()),
                        tripsFor(was, p.key()).size(),
                        tripsFor(is, p.key()).size()))
                .filter(f -> f.first() != null || f.second() != null)
                .toList();
    }

    private static @Nullable LocalDate finish(SeasonReport report, String subproject) {
        return report.subprojects().stream()
                .filter(p -> p.key().equals(subproject))
                .findFirst()
                .map(SeasonReport.Part::finish)
                .orElse(null);
    }

    /** Trips with work for a subproject, in order. */
    public static List<SeasonReport.TripPart> tripsFor(SeasonReport report, String subproject) {
        Set<String> stages = report.stages().stream()
                .filter(s -> s.subproject().equals(subproject))
                .map(SeasonReport.StagePart::key)
                .collect(Collectors.toSet());
        return report.trips().stream()
                .filter(t ->
                        t.days().stream().flatMap(d -> d.work().stream()).anyMatch(w -> stages.contains(w.stage())))
                .toList();
    }
}
