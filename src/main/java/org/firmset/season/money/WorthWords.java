package org.firmset.season.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.firmset.measure.Cash;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;
import org.firmset.spend.EarnedValue;
import org.firmset.spend.FinishedWork;
import org.firmset.spend.Forecast;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Of which stages the worth of the work is made. */
public final class WorthWords {
    private final MoneyReport report;
    private final Baseline kept;
    private final EarnedValue value;
    private final Names names;
    private final Map<String, LocalDate> finished;

    public WorthWords(MoneyReport report, Baseline kept) {
        this.report = report;
        this.kept = kept;
        value = report.worth(kept);
        names = new Names(report.homestead());
        finished = FinishedWork.of(report.homestead());
    }

    /** Planned value: each stage that was to be finished by now. */
    public WordTable planned() {
        Map<String, LocalDate> days = new TreeMap<>();
        for (Baseline.Item item : kept.items()) {
            if (item.stage() != null && isDue(item)) {
                days.put(item.stage(), Objects.requireNonNull(item.finish()));
            }
        }
        List<List<String>> rows = new ArrayList<>();
        days.forEach((stage, day) -> rows.add(List.of(
                names.stage(stage), Dates.date(day), report.show(kept.sum(i -> isDue(i) && stage.equals(i.stage()))))));
        rows.add(List.of("All together", "", report.show(value.planned())));
        return new WordTable("Was to be finished by now", List.of("Stage", "By", "In the budget"), rows);
    }

    private boolean isDue(Baseline.Item item) {
        return item.finish() != null && !item.finish().isAfter(report.today());
    }

    /** Keys of the stages that are finished, in the order of {@link #earned}. */
    public List<String> finished() {
        return List.copyOf(finished.keySet());
    }

    /** Spent and committed of a finished stage. */
    public Forecast.Row costOf(String stage) {
        return report.forecast().sumOf(of -> stage.equals(of.stage()));
    }

    /** Spent and committed of all finished stages, which is what they cost. */
    public Forecast.Row cost() {
        return report.ofFinished();
    }

    /** Earned value and actual cost: each stage that is finished, what it was to cost and what it cost. */
    public WordTable earned() {
        List<List<String>> rows = new ArrayList<>();
        finished.forEach((stage, day) -> rows.add(row(
                names.stage(stage),
                Dates.date(day),
                day.isAfter(report.today()) ? nothing() : kept.sum(i -> stage.equals(i.stage())),
                costOf(stage))));
        rows.add(row("All together", "", value.earned(), cost()));
        return new WordTable(
                "Is finished",
                List.of("Stage", "On", "In the budget", "Spent", "On order", "Cost over or under"),
                rows);
    }

    private List<String> row(String name, String day, Money budget, Forecast.Row cost) {
        return List.of(
                name,
                day,
                report.show(budget),
                report.show(cost.spent()),
                report.show(cost.committed()),
                MoneyWords.against(cost.spent().add(cost.committed()), budget));
    }

    /** Budget at completion: each subproject. */
    public WordTable whole() {
        List<List<String>> rows = new ArrayList<>();
        report.homestead().subprojects().forEach(s -> rows.add(List.of(s.name(), report.show(kept.of(s.key())))));
        Money others = kept.sum(i -> !isOfNow(i.subproject()));
        if (!others.isZero()) {
            rows.add(List.of(Names.NOBODY + ", or no longer there", report.show(others)));
        }
        rows.add(List.of("All together", report.show(value.budget())));
        return new WordTable("The whole budget", List.of("Subproject", "In the budget"), rows);
    }

    private boolean isOfNow(@Nullable String subproject) {
        return report.homestead().subprojects().stream().anyMatch(s -> s.key().equals(subproject));
    }

    private Money nothing() {
        return Cash.ofCents(0, report.currency());
    }
}
