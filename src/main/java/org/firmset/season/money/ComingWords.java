package org.firmset.season.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.Tool;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Forecast;
import org.javamoney.moneta.Money;

/** What is still to be paid, one by one. */
public final class ComingWords {
    private final MoneyReport report;
    private final Names names;

    public ComingWords(MoneyReport report) {
        this.report = report;
        names = new Names(report.homestead());
    }

    /** What a sum that is still to pay is made of, by the day it is due; the last row is the sum. */
    public WordTable table(Forecast.Of of) {
        List<List<String>> rows = new ArrayList<>();
        Money sum = report.budget().sum(i -> false);
        for (Coming next : of(of)) {
            sum = sum.add(next.expected());
            rows.add(List.of(
                    words(next),
                    Counts.show(next.kind(), next.quantity()),
                    Counts.each(report, next.expected(), next.quantity()),
                    Dates.date(next.on()),
                    report.show(next.expected())));
        }
        rows.add(List.of("Still to pay", WordTable.NONE, WordTable.NONE, WordTable.NONE, report.show(sum)));
        return new WordTable(
                "What is still to pay", List.of("What", "How many", "Each, tax included", "Due", "Amount"), rows);
    }

    private List<Coming> of(Forecast.Of of) {
        return report.coming().stream()
                .filter(c -> Objects.equals(c.subproject(), of.subproject())
                        && Objects.equals(c.stage(), of.stage())
                        && (of.kind() == null || of.kind() == c.kind()))
                .sorted(Comparator.comparing(Coming::on).thenComparing(Coming::purpose))
                .toList();
    }

    String words(Coming coming) {
        return switch (coming.purpose()) {
            case PACKS -> names.material(coming.what());
            case ITEM -> coming.what();
            case DELIVERY -> "delivery by " + names.supplier(coming.what());
            case TOOL -> tool(coming.what());
            case DRIVE, FOOD, GENERATOR, PAID_DOWN, REST_OF_ORDER ->
                coming.purpose().words();
        };
    }

    private String tool(String key) {
        return report.homestead().tools().stream()
                .filter(t -> t.key().equals(key))
                .map(Tool::name)
                .findFirst()
                .orElse(key);
    }
}
