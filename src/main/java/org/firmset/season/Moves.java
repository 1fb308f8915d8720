package org.firmset.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;

/** Says what is different between two plans, the weightiest first. */
public final class Moves {
    private final SeasonReport before;
    private final SeasonReport after;
    private final List<String> sentences = new ArrayList<>();

    private Moves(SeasonReport before, SeasonReport after) {
        this.before = before;
        this.after = after;
    }

    /** One sentence for each difference; empty when the plans agree in finishes, trips, money and stages. */
    public static List<String> between(SeasonReport before, SeasonReport after) {
        Moves moves = new Moves(before, after);
        after.subprojects().forEach(moves::subproject);
        moves.tripsAndMoney();
        moves.stages();
        return List.copyOf(moves.sentences);
    }

    private void subproject(SeasonReport.Part part) {
        LocalDate finish = part.finish();
        Optional<LocalDate> was = before.subprojects().stream()
                .filter(p -> p.key().equals(part.key()))
                .findFirst()
                .map(SeasonReport.Part::finish);
        if (finish != null && was.isPresent() && !was.get().equals(finish)) {
            sentences.add("%s is finished %s, on %s."
                    .formatted(part.name(), byHowMuch(was.get(), finish), Dates.day(finish)));
        }
    }

    private static String byHowMuch(LocalDate was, LocalDate is) {
        long days = ChronoUnit.DAYS.between(was, is);
        return Math.abs(days) + (Math.abs(days) == 1 ? " day " : " days ") + (days > 0 ? "later" : "sooner");
    }

    private void tripsAndMoney() {
        int trips = after.tripCount() - before.tripCount();
        if (trips != 0) {
            sentences.add("It takes %d %s %s: %d in all."
                    .formatted(
                            Math.abs(trips),
                            Math.abs(trips) == 1 ? "trip" : "trips",
                            trips > 0 ? "more" : "less",
                            after.tripCount()));
        }
        var wasTotal = before.costs().total();
        var total = after.costs().total();
        if (wasTotal.getCurrency().equals(total.getCurrency()) && !wasTotal.equals(total)) {
            long cents = Cash.cents(total) - Cash.cents(wasTotal);
            sentences.add("It costs %s %s."
                    .formatted(
                            Cash.show(Math.abs(cents), total.getCurrency().getCurrencyCode()),
                            cents > 0 ? "more" : "less"));
        }
    }

    private void stages() {
        for (SeasonReport.StagePart stage : after.stages()) {
            Optional<SeasonReport.StagePart> was = before.stage(stage.key());
            if (was.isEmpty()) {
                sentences.add("%s is new, on %s.".formatted(stage.name(), Dates.day(stage.start())));
            } else if (!was.get().start().equals(stage.start())) {
                sentences.add("%s starts %s, on %s."
                        .formatted(
                                stage.name(), byHowMuch(was.get().start(), stage.start()), Dates.day(stage.start())));
            } else if (!was.get().finish().equals(stage.finish())) {
                sentences.add("%s is done %s, on %s."
                        .formatted(
                                stage.name(),
                                byHowMuch(was.get().finish(), stage.finish()),
                                Dates.day(stage.finish())));
            }
        }
        before.stages().stream()
                .filter(s -> after.stage(s.key()).isEmpty())
                .forEach(s -> sentences.add(s.name() + " is gone."));
    }
}
