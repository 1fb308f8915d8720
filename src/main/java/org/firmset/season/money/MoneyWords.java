package org.firmset.season.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firmset.homestead.Subproject;
import org.firmset.measure.Cash;
import org.firmset.season.words.WordTable;
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
        Standing all = together();
        return "Expected at the finish: %s of %s that may be spent, %s."
                .formatted(
                        show(all.row().expected()),
                        show(allowed()),
                        all.against().orElseThrow());
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
        notes.add(
                "Low to high are the lowest and the highest price that anybody asked within a year, for what is still to"
                        + " buy. They are no odds: how much is needed may change as well.");
        notes.add("What a trip costs is shared over its stages %s."
                .formatted(report.sharing().words()));
        return notes;
    }

    /**
     * How one subproject stands, or all together.
     *
     * @param isWhole all together
     * @param subproject its key; null for what nobody bears yet, and for the whole
     * @param allowed what may be spent on it; null when nobody has said
     */
    public record Standing(
            boolean isWhole,
            @Nullable String subproject,
            String name,
            @Nullable Money allowed,
            Forecast.Row row) {
        /** "$12.00 over" what may be spent; empty when nobody has said how much may be. */
        public Optional<String> against() {
            return Optional.ofNullable(allowed).map(a -> MoneyWords.against(row.expected(), a));
        }
    }

    /** Each of {@link #bearers()}, in that order. */
    public List<Standing> standings() {
        Map<String, Money> allowed = report.homestead().subprojects().stream()
                .collect(Collectors.toMap(Subproject::key, Subproject::budget));
        return bearers().stream()
                .map(key -> new Standing(false, key, name(key), key == null ? null : allowed.get(key), row(key)))
                .toList();
    }

    public Standing together() {
        return new Standing(
                true, null, "All together", allowed(), report.forecast().whole());
    }

    private Money allowed() {
        return report.homestead().subprojects().stream()
                .map(Subproject::budget)
                .reduce(report.budget().sum(i -> false), Money::add);
    }

    /** Subprojects in the order of {@link #bearers()}, then the whole. */
    public WordTable overview() {
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
                Stream.concat(standings().stream(), Stream.of(together()))
                        .map(this::figures)
                        .toList());
    }

    private List<String> figures(Standing standing) {
        Forecast.Row row = standing.row();
        return List.of(
                standing.name(),
                standing.allowed() == null ? WordTable.NONE : show(standing.allowed()),
                show(row.spent()),
                show(row.committed()),
                show(row.toBuy()),
                show(row.expected()),
                lowToHigh(row),
                standing.against().orElse(WordTable.NONE));
    }

    public String lowToHigh(Forecast.Row row) {
        return show(row.lowest()) + " to " + show(row.highest());
    }

    /**
     * Keys of the subprojects as their owners list them, then those that are gone and still stand on receipts; null last,
     * when there is money that nobody bears yet.
     */
    public List<@Nullable String> bearers() {
        List<@Nullable String> keys = new ArrayList<>();
        report.homestead().subprojects().forEach(s -> keys.add(s.key()));
        report.forecast().bySubproject().keySet().stream()
                .filter(key -> !keys.contains(key))
                .toList()
                .forEach(keys::add);
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

    /**
     * Of one subproject: each stage that costs anything, in the order of the stages, and under it what it is for, whose
     * sum it is.
     */
    public List<Forecast.Row> rowsOf(@Nullable String subproject) {
        List<@Nullable String> order = new ArrayList<>();
        report.homestead().stages().forEach(stage -> order.add(stage.key()));
        List<Forecast.Row> kinds = report.forecast().rows().stream()
                .filter(r -> Objects.equals(r.of().subproject(), subproject))
                .sorted(Comparator.<Forecast.Row>comparingInt(r -> order.indexOf(r.of().stage()))
                        .thenComparing(r -> Objects.requireNonNullElse(r.of().stage(), ""))
                        .thenComparing(r -> Objects.requireNonNull(r.of().kind())))
                .toList();
        List<Forecast.Row> rows = new ArrayList<>();
        for (Forecast.Row kind : kinds) {
            String stage = kind.of().stage();
            if (rows.isEmpty() || !Objects.equals(rows.getLast().of().stage(), stage)) {
                rows.add(report.forecast().ofStage(subproject, stage));
            }
            rows.add(kind);
        }
        return rows;
    }

    /** The rows of {@link #rowsOf} in words. */
    public WordTable drill(@Nullable String subproject) {
        List<List<String>> rows = rowsOf(subproject).stream()
                .map(r -> List.of(
                        r.of().kind() == null ? names.stage(r.of().stage()) : WordTable.PART + kind(r.of().kind()),
                        orDash(r.spent()),
                        orDash(r.committed()),
                        orDash(r.toBuy()),
                        orDash(r.expected())))
                .toList();
        return new WordTable(
                names.subproject(subproject),
                List.of("Stage", "Spent", "Committed", "Still to pay", "Expected at finish"),
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

    private String orDash(Money amount) {
        return amount.isZero() ? WordTable.NONE : show(amount);
    }

    private String show(Money amount) {
        return report.show(amount);
    }
}
