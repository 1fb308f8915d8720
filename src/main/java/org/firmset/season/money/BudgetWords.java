package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WordTable;
import org.firmset.spend.Baseline;
import org.firmset.spend.Difference;
import org.firmset.spend.EarnedValue;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** How what is expected differs from a kept budget and why, in sentences and tables. */
public final class BudgetWords {
    private final MoneyReport report;
    private final Baseline kept;
    private final Names names;
    private final DifferenceWords differences;

    public BudgetWords(MoneyReport report, Baseline kept) {
        this.report = report;
        this.kept = kept;
        names = new Names(report.homestead());
        differences = new DifferenceWords(report, kept);
    }

    /** All of it in one sentence. */
    public String verdict() {
        Difference why = differences.sum(d -> true);
        return "Against the budget of %s, %s: %s%s."
                .formatted(
                        Dates.date(kept.on()),
                        show(kept.whole()),
                        MoneyWords.overUnder(why.sum()),
                        why.sum().isZero() && reasons(why).isEmpty() ? "" : ". " + capital(reasons(why)));
    }

    /** Of one subproject, with its reserve. */
    public String verdict(String subproject) {
        Money was = kept.of(subproject);
        Money is = report.budget().of(subproject);
        Money reserve = kept.reserveOf(subproject);
        Difference why = differences.sum(d -> subproject.equals(d.thing().subproject()));
        String reasons = reasons(why);
        return "%s: budgeted %s, expected %s, %s%s.%s"
                .formatted(
                        names.subproject(subproject),
                        show(was),
                        show(is),
                        MoneyWords.against(is, was),
                        reasons.isEmpty() ? "" : "; " + reasons,
                        reserve.isZero() ? "" : " " + reserve(is.subtract(was), reserve));
    }

    private String reserve(Money over, Money reserve) {
        return over.isGreaterThan(reserve)
                ? "The reserve of %s does not cover it.".formatted(show(reserve))
                : over.isPositive()
                        ? "The reserve of %s covers it.".formatted(show(reserve))
                        : "The reserve of %s is untouched.".formatted(show(reserve));
    }

    /** What changed, thing by thing. */
    public DifferenceWords differences() {
        return differences;
    }

    private String reasons(Difference why) {
        List<String> parts = new ArrayList<>();
        reason(parts, "prices", why.price(), "more", "less");
        reason(parts, "quantities", why.quantity(), "more", "less");
        reason(parts, "what is new or gone", why.scope(), "more", "less");
        return String.join(", ", parts);
    }

    private void reason(List<String> parts, String what, Money amount, String above, String below) {
        if (!amount.isZero()) {
            parts.add("%s make %s %s".formatted(what, show(amount.abs()), amount.isPositive() ? above : below));
        }
    }

    private static String capital(String text) {
        return text.isEmpty() ? "" : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    /** What is finished and what it cost, in plain words. */
    public List<String> worth() {
        EarnedValue value = report.worth(kept);
        List<String> words = new ArrayList<>();
        words.add("By the budget, work worth %s was to be finished by now, and work worth %s is: %s."
                .formatted(show(value.planned()), show(value.earned()), value.workInWords()));
        words.add("The finished work cost %s, %s.".formatted(show(value.actual()), value.costInWords()));
        value.estimateAtCompletion()
                .ifPresent(e -> words.add(
                        "If the rest costs as the work so far, everything comes to %s; by today's prices it comes to %s."
                                .formatted(
                                        show(e), show(report.forecast().whole().expected()))));
        return words;
    }

    /** The figures underneath, by their terms. */
    public WordTable terms() {
        EarnedValue value = report.worth(kept);
        return new WordTable(
                "The figures underneath, by the terms of EIA-748",
                List.of("Term", "What", "Figure"),
                List.of(
                        List.of("PV", "was to be finished by now", show(value.planned())),
                        List.of("EV", "is finished", show(value.earned())),
                        List.of("AC", "what that cost" + onOrder(), show(value.actual())),
                        List.of("BAC", "the whole budget", show(value.budget())),
                        List.of("CPI", over("EV / AC", value.earned(), value.actual()), ratio(value.costIndex())),
                        List.of("SPI", over("EV / PV", value.earned(), value.planned()), ratio(value.scheduleIndex())),
                        List.of(
                                "EAC",
                                "BAC x AC / EV = %s x %s / %s"
                                        .formatted(show(value.budget()), show(value.actual()), show(value.earned())),
                                money(value.estimateAtCompletion())),
                        List.of(
                                "ETC",
                                value.estimateAtCompletion()
                                        .map(e -> "EAC - AC = %s - %s".formatted(show(e), show(value.actual())))
                                        .orElse("EAC - AC"),
                                money(value.estimateToComplete())),
                        List.of(
                                "TCPI",
                                over(
                                        "(BAC - EV) / (BAC - AC)",
                                        value.budget().subtract(value.earned()),
                                        value.budget().subtract(value.actual())),
                                ratio(value.toCompleteIndex()))));
    }

    private String onOrder() {
        Money committed = report.ofFinished().committed();
        return committed.isZero() ? "" : ", %s of it on order".formatted(show(committed));
    }

    private String over(String formula, Money above, Money below) {
        return "%s = %s / %s".formatted(formula, show(above), show(below));
    }

    private static String ratio(Optional<BigDecimal> ratio) {
        return ratio.map(r -> r.setScale(3, RoundingMode.HALF_EVEN).toPlainString())
                .orElse(WordTable.NONE);
    }

    private String money(Optional<Money> amount) {
        return amount.map(this::show).orElse(WordTable.NONE);
    }

    private String show(@Nullable Money amount) {
        return report.show(Objects.requireNonNull(amount));
    }
}
