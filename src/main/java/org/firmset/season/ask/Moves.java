package org.firmset.season.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.measure.Cash;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;

/** Says what is different between two plans, the weightiest first. */
public final class Moves {
    private final SideBySide plans;
    private final List<String> sentences = new ArrayList<>();

    private Moves(SideBySide plans) {
        this.plans = plans;
    }

    /** One sentence for each difference; empty when the plans agree in finishes, trips, money and stages. */
    public static List<String> between(SeasonReport before, SeasonReport after) {
        Moves moves = new Moves(Comparing.beforeAndNow(before, after));
        moves.plans.finishes().forEach(moves::subproject);
        moves.tripsAndMoney(before, after);
        moves.plans.moved().forEach(moves::stage);
        return List.copyOf(moves.sentences);
    }

    private void subproject(SideBySide.Finish finish) {
        LocalDate now = finish.second();
        if (now != null && finish.days().orElse(0) != 0) {
            sentences.add("%s is finished %s, on %s."
                    .formatted(finish.name(), SideBySideWords.days(finish.days().getAsLong()), Dates.day(now)));
        }
    }

    private void tripsAndMoney(SeasonReport before, SeasonReport after) {
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

    private void stage(SideBySide.Moved stage) {
        SideBySide.Span now = stage.second();
        if (now == null) {
            sentences.add(stage.name() + " is gone.");
        } else if (stage.first() == null) {
            sentences.add("%s is new, on %s.".formatted(stage.name(), Dates.day(now.start())));
        } else if (stage.startDays().orElse(0) != 0) {
            sentences.add("%s starts %s, on %s."
                    .formatted(
                            stage.name(), SideBySideWords.days(stage.startDays().getAsLong()), Dates.day(now.start())));
        } else {
            sentences.add("%s is done %s, on %s."
                    .formatted(
                            stage.name(),
                            SideBySideWords.days(stage.finishDays().orElseThrow()),
                            Dates.day(now.finish())));
        }
    }
}
