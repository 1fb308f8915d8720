package org.firmset.season.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;
import org.firmset.measure.Cash;
import org.firmset.season.WordTable;
import org.firmset.spend.Forecast;
import org.firmset.spend.LineKind;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** Where the money stands, in sentences and tables: for the page and the terminal alike. */
public final class MoneyWords {
    private final MoneyReport report;
    private final Names names;

    public MoneyWords(MoneyReport report) {
        this.report = report;
        names = new Names(report.homestead());
    }

    /** Everything in one sentence. */
    public String verdict() {
        Money allowed = report.homestead().subprojects().stream()
                .map(Subproject::budget)
                .reduce(report.budget().sum(i -> false), Money::add);
        return "Expected at the finish: %s of %s that may be spent, %s."
                .formatted(
                        show(report.forecast().whole().expected()),
                        show(allowed),
                        against(report.forecast().whole().expected(), allowed));
    }

    /** What must be known to read the sums: what is held apart, left out or shared how. At least one sentence. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!report.forecast().unpriced().isEmpty()) {
            notes.add("Nobody has a price for %s: the sums are too low by them."
                    .formatted(report.forecast().unpriced().stream()
                            .map(names::material)
                            .collect(Collectors.joining(", "))));
        }
        if (!report.forecast().heldBack().isZero()) {
            notes.add("Refundable deposits that are out, %s, are in no sum."
                    .formatted(show(report.forecast().heldBack())));
        }
        if (report.made().isEmpty()) {
            notes.add("The plan makes no trip: drives, food and deliveries ahead are not counted.");
        }
        notes.add("What a trip costs is shared over its stages %s."
                .formatted(report.sharing().words()));
        return notes;
    }

    /** Subprojects in the order of {@link #bearers()}, then the whole. */
    public WordTable overview() {
        List<List<String>> rows = new ArrayList<>();
        for (String key : bearers()) {
            Forecast.Row row = row(key);
            Money budget = report.homestead().subprojects().stream()
                    .filter(s -> s.key().equals(key))
                    .map(Subproject::budget)
                    .findFirst()
                    .orElse(null);
            rows.add(figures(names.subproject(key), budget, row));
        }
        Money allowed = report.homestead().subprojects().stream()
                .map(Subproject::budget)
                .reduce(report.budget().sum(i -> false), Money::add);
        rows.add(figures("All together", allowed, report.forecast().whole()));
        return new WordTable(
                "Where the money stands",
                List.of(
                        "Subproject",
                        "May be spent",
                        "Spent",
                        "Committed",
                        "Still to pay",
                        "Expected at finish",
                        "Low to high",
                        "Against what may be spent"),
                rows);
    }

    private List<String> figures(String name, @Nullable Money budget, Forecast.Row row) {
        return List.of(
                name,
                budget == null ? "–" : show(budget),
                show(row.spent()),
                show(row.committed()),
                show(row.toBuy()),
                show(row.expected()),
                show(row.lowest()) + " to " + show(row.highest()),
                budget == null ? "–" : against(row.expected(), budget));
    }

    /** Keys of the subprojects as their owners list them; null last, when there is money that nobody bears yet. */
    public List<@Nullable String> bearers() {
        List<@Nullable String> keys = new ArrayList<>();
        report.homestead().subprojects().forEach(s -> keys.add(s.key()));
        if (report.forecast().rows().stream().anyMatch(r -> r.of().subproject() == null)) {
            keys.add(null);
        }
        return keys;
    }

    public String name(@Nullable String subproject) {
        return names.subproject(subproject);
    }

    private Forecast.Row row(@Nullable String subproject) {
        return report.forecast().sumOf(of -> Objects.equals(of.subproject(), subproject));
    }

    /** Of one subproject: each stage and kind that costs anything, in the order of the stages. */
    public List<Forecast.Row> rowsOf(@Nullable String subproject) {
        List<String> order =
                report.homestead().stages().stream().map(Stage::key).toList();
        return report.forecast().rows().stream()
                .filter(r -> Objects.equals(r.of().subproject(), subproject))
                .sorted(Comparator.<Forecast.Row>comparingInt(r -> order.indexOf(r.of().stage()))
                        .thenComparing(r -> Objects.requireNonNull(r.of().kind())))
                .toList();
    }

    /** The rows of {@link #rowsOf} in words. */
    public WordTable drill(@Nullable String subproject) {
        List<List<String>> rows = rowsOf(subproject).stream()
                .map(r -> List.of(
                        names.stage(r.of().stage()),
                        kind(r.of().kind()),
                        show(r.spent()),
                        show(r.committed()),
                        show(r.toBuy()),
                        show(r.expected())))
                .toList();
        return new WordTable(
                names.subproject(subproject),
                List.of("Stage", "For", "Spent", "Committed", "Still to pay", "Expected at finish"),
                rows);
    }

    /** As a person says it: drives are more than their fuel, and fees include what brings things. */
    static String kind(@Nullable LineKind kind) {
        return switch (Objects.requireNonNull(kind)) {
            case MATERIAL -> "materials";
            case TOOL -> "tools and hire";
            case FEE -> "deliveries and fees";
            case FUEL -> "drives and fuel";
            case DEPOSIT -> "refundable deposits";
            case OTHER -> "food and other";
        };
    }

    /** "$12.00 over", "$3.00 under", "as it was to be". */
    static String against(Money sum, Money budget) {
        return overUnder(sum.subtract(budget));
    }

    static String overUnder(Money difference) {
        if (difference.isZero()) {
            return "as it was to be";
        }
        String amount = Cash.show(
                Math.abs(Cash.cents(difference)), difference.getCurrency().getCurrencyCode());
        return amount + (difference.isPositive() ? " over" : " under");
    }

    private String show(Money amount) {
        return report.show(amount);
    }
}
