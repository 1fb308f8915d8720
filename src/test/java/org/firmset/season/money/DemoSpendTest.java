package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Cash;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.spend.Baseline;
import org.firmset.spend.Difference;
import org.firmset.spend.EarnedValue;
import org.firmset.spend.Keys;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.table.SeedReceipts;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The demo from its table of receipts to what differs from its first budget, by the sums of docs/demo.md. */
class DemoSpendTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);
    private static final List<Receipt> RECEIPTS = SeedReceipts.demo(DEMO, 0);
    private static final Baseline FIRST = SeedBudget.demo(0);
    private static final MoneyReport REPORT = report();
    private static final List<BudgetDifference> DIFFERENCES = BudgetDifference.of(FIRST, REPORT.budget());

    private static MoneyReport report() {
        var planned =
                (SeasonPlanner.Result.Planned) new SeasonPlanner().plan(DEMO, TODAY, Style.SOONEST, new Effort(300, 1));
        return MoneyReport.of(new Books(DEMO, planned.season(), RECEIPTS, TODAY));
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }

    private static Difference of(
            @Nullable String subproject, @Nullable String stage, LineKind kind, @Nullable String material) {
        Thing thing = new Thing(subproject, stage, kind, material);
        return DIFFERENCES.stream()
                .filter(d -> d.thing().equals(thing))
                .map(BudgetDifference::difference)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_first_budget_was_kept_before_anything_was_bought_and_names_only_what_there_is() {
        Keys keys = Keys.of(DEMO);
        assertThat(FIRST.on())
                .isEqualTo(LocalDate.of(2026, 9, 5))
                .isBefore(RECEIPTS.stream()
                        .map(Receipt::date)
                        .min(LocalDate::compareTo)
                        .orElseThrow());
        assertThat(FIRST.items()).hasSizeGreaterThan(150).allSatisfy(item -> {
            assertThat(keys.subprojects()).contains(String.valueOf(item.subproject()));
            if (item.stage() != null) {
                assertThat(keys.stages()).containsEntry(item.stage(), String.valueOf(item.subproject()));
            }
            assertThat(DEMO.materials().stream().map(Material::key))
                    .containsAll(item.material() == null ? List.of() : List.of(item.material()));
        });
    }

    /** What a subproject may cost is what it was to cost and its reserve of 5 %, rounded up to whole hundreds. */
    @Test
    void what_may_be_spent_is_the_first_budget_with_its_reserve() {
        DEMO.subprojects().forEach(s -> {
            Money was = FIRST.of(s.key());
            long reserve = Cash.cents(FIRST.reserveOf(s.key()));
            assertThat(reserve).isBetween(Cash.cents(was) / 20, Cash.cents(was) / 20 + 1);
            assertThat(Cash.cents(s.budget())).isEqualTo(Math.ceilDiv(Cash.cents(was) + reserve, 10_000) * 10_000);
        });
    }

    @Test
    void all_differences_add_up_to_the_whole_one_and_none_of_the_three_reasons_is_missing() {
        Money sum = usd("0.00");
        List<Difference> each = new ArrayList<>();
        for (BudgetDifference one : DIFFERENCES) {
            Difference d = one.difference();
            sum = sum.add(d.price()).add(d.quantity()).add(d.scope());
            each.add(d);
        }
        assertThat(sum).isEqualTo(REPORT.forecast().whole().expected().subtract(FIRST.whole()));
        assertThat(each)
                .anyMatch(d -> d.price().isPositive())
                .anyMatch(d -> d.price().isNegative())
                .anyMatch(d -> d.quantity().isPositive())
                .anyMatch(d -> d.scope().isPositive());
    }

    /** By hand; packs still to buy carry 1 %. */
    @Test
    void prices_quantities_and_new_things_are_told_apart() {
        Money none = usd("0.00");
        // 130 -> 180; 60 -> 39.00 + 22.50 + 64.00 - 22.50
        assertThat(of("shop", null, LineKind.FEE, null)).isEqualTo(new Difference(usd("50.00"), none, none));
        assertThat(of("cabin", "cabin-holes", LineKind.TOOL, null)).isEqualTo(new Difference(usd("43.00"), none, none));
        // 78 at 2.45 and 1 % -> 40 kept of 44 at 2.45, 42 at 2.48 and 1 %: 193.02 -> 203.20, of that 4 x 2.4746
        assertThat(of("water", "water-wall", LineKind.MATERIAL, "block-8"))
                .isEqualTo(new Difference(usd("0.28"), usd("9.90"), none));
        // six units, 255 -> 268, with 1 %
        assertThat(of("cabin", "cabin-windows", LineKind.MATERIAL, "opening"))
                .isEqualTo(new Difference(usd("78.78"), none, none));
        // cloth and pipe nobody had thought of; a box of hardware for the shelf; the sample of the water
        assertThat(of("water", "water-track", LineKind.MATERIAL, null))
                .isEqualTo(new Difference(none, none, usd("112.00")));
        assertThat(of("shop", "shop-power-shelf", LineKind.MATERIAL, "hardware-box"))
                .isEqualTo(new Difference(none, none, usd("84.84")));
        assertThat(of("water", "water-fill", LineKind.FEE, null).sum()).isEqualTo(usd("48.00"));
    }

    /** Track, topsoil and holes are finished; the trench, which was to be dug by then, is not. */
    @Test
    void the_finished_work_cost_more_than_it_was_to_cost() {
        EarnedValue worth = REPORT.worth(FIRST);
        Map<String, Money> early = FIRST.items().stream()
                .filter(i -> i.finish() != null && i.finish().isBefore(TODAY))
                .collect(Collectors.toMap(i -> Objects.requireNonNull(i.stage()), Baseline.Item::amount, Money::add));
        assertThat(early).containsOnlyKeys("water-track", "water-excavate", "shop-topsoil", "cabin-holes");
        Money planned = early.values().stream().reduce(usd("0.00"), Money::add);
        // 337.78 for the track, 76.23 for the topsoil, 194.27 for the holes, by the receipts
        assertThat(worth)
                .isEqualTo(new EarnedValue(
                        planned,
                        planned.subtract(Objects.requireNonNull(early.get("water-excavate"))),
                        usd("337.78").add(usd("76.23")).add(usd("194.27")),
                        FIRST.whole()));
        assertThat(worth.costVariance().isNegative()).isTrue();
        assertThat(worth.scheduleVariance().isNegative()).isTrue();
    }

    @Test
    void the_planned_course_stands_beside_the_real_one() {
        Course course = Course.of(REPORT, FIRST);
        assertThat(course.planned().getLast().sum()).isEqualTo(FIRST.whole());
        // by hand from seed-data/juniper-bench-receipts.csv
        assertThat(course.real().getLast().sum()).isEqualTo(usd("1821.40"));
        assertThat(course.ahead().getLast().sum())
                .isEqualTo(REPORT.forecast().whole().expected());
    }

    @Test
    void a_mixer_is_bought_and_a_compactor_hired() {
        Map<String, ToolChoice> tools = REPORT.tools().stream().collect(Collectors.toMap(ToolChoice::key, t -> t));
        ToolChoice mixer = Objects.requireNonNull(tools.get("mixer"));
        assertThat(mixer.buy()).isTrue();
        // 460 - 240 and 6 a trip against 52 a day
        assertThat(mixer.cost()).isEqualTo(usd("220.00").add(usd("6.00").multiply(mixer.trips())));
        assertThat(mixer.hiring()).isEqualTo(usd("52.00").multiply(mixer.days()));
        // what it brings when it is sold is a figure with a minus, which needs a word
        assertThat(new TimeWords(REPORT).soldAgain())
                .hasValueSatisfying(w -> assertThat(w).contains("sold again"));
        ToolChoice compactor = Objects.requireNonNull(tools.get("compactor"));
        assertThat(compactor.buy()).isFalse();
        assertThat(compactor.cost())
                .isEqualTo(
                        usd("58.00").multiply(compactor.days()).add(usd("10.00").multiply(compactor.trips())));
    }

    @Test
    void dates_of_the_first_budget_move_with_the_demo() {
        Baseline later = SeedBudget.demo(52);
        assertThat(later.on()).isEqualTo(FIRST.on().plusWeeks(52));
        assertThat(later.whole()).isEqualTo(FIRST.whole());
        Course course = Course.of(REPORT, later);
        assertThat(course.planned())
                .extracting(Course.Point::on)
                .containsExactlyElementsOf(Course.of(REPORT, FIRST).planned().stream()
                        .map(p -> p.on().plusWeeks(52))
                        .toList());
    }
}
