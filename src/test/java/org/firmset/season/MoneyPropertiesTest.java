package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.firmset.Cases;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.BudgetKind;
import org.firmset.homestead.Budgeting;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Tool;
import org.firmset.homestead.ToolCost;
import org.firmset.homestead.TripSharing;
import org.firmset.homestead.file.RecordJson;
import org.firmset.measure.Cash;
import org.firmset.measure.UnitSystem;
import org.firmset.plan.RunKind;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Style;
import org.firmset.season.money.Books;
import org.firmset.season.money.BudgetDifference;
import org.firmset.season.money.CashNeed;
import org.firmset.season.money.Changed;
import org.firmset.season.money.Coming;
import org.firmset.season.money.ComingWords;
import org.firmset.season.money.Course;
import org.firmset.season.money.MadeParts;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.MoneyWords;
import org.firmset.season.money.MonthMoney;
import org.firmset.season.money.Payment;
import org.firmset.season.money.Purpose;
import org.firmset.season.report.ReportWriter;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.Forecast;
import org.firmset.spend.RandomReceipts;
import org.firmset.spend.Receipt;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;

/** Whatever the homestead, its plan and its receipts: no cent is lost or counted twice. Others by -Dfirmset.seed=... */
class MoneyPropertiesTest {
    private static final long BASE_SEED = Long.getLong("firmset.seed", 2027);
    private static final String CURRENCY = "USD";

    @Test
    void parts_make_the_whole_on_random_homesteads() {
        List<RandomHomestead> homesteads = RandomHomestead.many(Cases.of(100), BASE_SEED);
        int planned = 0;
        for (RandomHomestead made : homesteads) {
            Trial trial = new Trial(made.homestead(), made.statusDate());
            if (trial.plan(Style.SOONEST).isPresent()) {
                check(
                        made,
                        trial.problem(Style.SOONEST),
                        trial.plan(Style.SOONEST).orElseThrow());
                planned++;
            }
        }
        assertThat(planned).isGreaterThan(homesteads.size() / 3);
    }

    private static void check(RandomHomestead made, org.firmset.plan.PlanningProblem problem, SeasonPlan plan) {
        String seed = "seed " + made.seed();
        PlannedSeason season = new PlannedSeason(problem, plan, ReportWriter.write(made.homestead(), problem, plan));
        MoneyReport plain = MoneyReport.of(new Books(made.homestead(), season, List.of(), made.statusDate()));
        isThePlans(plain, plan, seed);
        List<Receipt> receipts = new RandomReceipts(made.seed()).many(12);
        MoneyReport rich =
                MoneyReport.of(new Books(rich(made.homestead(), made.seed()), season, receipts, made.statusDate()));
        addsUp(plain, seed);
        addsUp(rich, seed);
        Money told = BudgetDifference.of(plain.budget(), rich.budget()).stream()
                .map(d -> d.difference().sum())
                .reduce(usd(0), Money::add);
        assertThat(told)
                .as(seed)
                .isEqualTo(rich.budget().whole().subtract(plain.budget().whole()));
        MadeParts.makeTheWhole(plain.budget(), rich, seed);
        MadeParts.makeTheWhole(rich.budget(), plain, seed);
        byte[] written = RecordJson.write(MoneyReport.BUDGET, rich.budget(), UnitSystem.METRIC)
                .getBytes(StandardCharsets.UTF_8);
        assertThat(RecordJson.read(MoneyReport.BUDGET, Baseline.class, written)).isEqualTo(rich.budget());
    }

    /** With nothing besides, all that is ahead is what the plan says it costs; it counts packs at the cheapest seller's. */
    private static void isThePlans(MoneyReport plain, SeasonPlan plan, String seed) {
        assertThat(cents(plain, p -> p == Purpose.DRIVE || p == Purpose.FOOD))
                .as(seed)
                .isEqualTo(plan.totals().tripCents() + plan.totals().extraRunCents());
        assertThat(cents(plain, p -> p == Purpose.DELIVERY))
                .as(seed)
                .isEqualTo(plan.totals().deliveryCents());
        assertThat(cents(plain, p -> p == Purpose.GENERATOR))
                .as(seed)
                .isEqualTo(plan.totals().generatorCents());
        long packs = cents(plain, p -> p == Purpose.PACKS);
        boolean fetched = plan.schedule().runs().stream().noneMatch(r -> r.kind() == RunKind.DELIVERY);
        assertThat(packs).as(seed).isGreaterThanOrEqualTo(plan.totals().materialCents());
        if (fetched) {
            assertThat(packs).as(seed).isEqualTo(plan.totals().materialCents());
        }
    }

    private static long cents(MoneyReport report, Predicate<Purpose> wanted) {
        return report.coming().stream()
                .filter(c -> wanted.test(c.purpose()))
                .mapToLong(c -> Cash.cents(c.expected()))
                .sum();
    }

    private static void addsUp(MoneyReport report, String seed) {
        Forecast.Row whole = report.forecast().whole();
        assertThat(sum(report.coming().stream().map(Coming::expected))).as(seed).isEqualTo(whole.toBuy());
        Money open = whole.toBuy().add(whole.committed());
        assertThat(sum(report.payments().stream().map(Payment::amount)))
                .as(seed)
                .isEqualTo(open);
        assertThat(sum(CashNeed.of(report).stream().map(CashNeed::sum)))
                .as(seed)
                .isEqualTo(open);
        assertThat(sum(MonthMoney.of(report).stream().map(MonthMoney::sum)))
                .as(seed)
                .isEqualTo(whole.expected());
        assertThat(Course.of(report).ahead().getLast().sum()).as(seed).isEqualTo(whole.expected());
        assertThat(report.budget().whole()).as(seed).isEqualTo(whole.expected());
        assertThat(sum(report.forecast().rows().stream().map(Forecast.Row::expected)))
                .as(seed)
                .isEqualTo(whole.expected());
        opensToItsParts(report, seed);
        assertThat(report.coming())
                .as(seed)
                .allMatch(
                        c -> !c.expected().isLessThan(c.low()) && !c.expected().isGreaterThan(c.high()));
    }

    /** What is still to pay of a stage opens to rows that make it. */
    private static void opensToItsParts(MoneyReport report, String seed) {
        MoneyWords words = new MoneyWords(report);
        ComingWords coming = new ComingWords(report);
        words.bearers().stream()
                .flatMap(bearer -> words.rowsOf(bearer).stream())
                .forEach(row -> assertThat(
                                coming.table(row.of()).rows().getLast().getLast())
                        .as(seed)
                        .isEqualTo(report.show(row.toBuy())));
    }

    private static Money sum(Stream<Money> amounts) {
        return amounts.reduce(usd(0), Money::add);
    }

    /** The same with tax, down payments, a reserve, items and tools to hire or buy. */
    private static Homestead rich(Homestead homestead, long seed) {
        List<BudgetItem> items = homestead.stages().stream()
                .limit(2)
                .map(s -> new BudgetItem(
                        "Item", BudgetKind.OTHER, s.subproject(), s.key(), usd(1_000 + seed % 977), null))
                .toList();
        Budgeting budgeting = new Budgeting(
                new BigDecimal("7.25"),
                new BigDecimal("5"),
                new BigDecimal("33.3"),
                seed % 2 == 0 ? TripSharing.BY_MASS : TripSharing.BY_HOURS,
                items);
        ToolCost cost = new ToolCost(usd(50_001), usd(20_000), usd(333), usd(7_000 + seed % 5_000), usd(1_001));
        List<Tool> tools = homestead.tools().stream()
                .map(t -> new Tool(
                        t.key(), t.name(), t.count(), t.draw(), t.allDay(), t.dutyPercent(), t.surgeFactor(), cost))
                .toList();
        return Changed.with(Changed.with(homestead, "tools", tools), "budgeting", budgeting);
    }

    private static Money usd(long cents) {
        return Cash.ofCents(cents, CURRENCY);
    }
}
