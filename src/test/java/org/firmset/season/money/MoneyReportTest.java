package org.firmset.season.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.BudgetItem;
import org.firmset.homestead.BudgetKind;
import org.firmset.homestead.Budgeting;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Need;
import org.firmset.homestead.Price;
import org.firmset.homestead.Progress;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.Supplier;
import org.firmset.homestead.Tool;
import org.firmset.homestead.ToolCost;
import org.firmset.homestead.TripSharing;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.UnitSystem;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.TwoWeekendsFile;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.Difference;
import org.firmset.spend.DriveWords;
import org.firmset.spend.EarnedValue;
import org.firmset.spend.LineKind;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.firmset.spend.TripCost;
import org.firmset.spend.TripReceipt;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Two weekends whose plan and sums docs/two-weekends.md works out by hand: 12 h and 865 kg, then 15 h and 151 kg. */
class MoneyReportTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final LocalDate FIRST = LocalDate.of(2027, 5, 8);
    private static final LocalDate SECOND = LocalDate.of(2027, 5, 22);
    private static final Homestead PLACE = TwoWeekendsFile.read();
    private static final MoneyReport PLAIN = report(PLACE, List.of());

    private static PlannedSeason season(Homestead homestead, LocalDate today) {
        var result = new SeasonPlanner().plan(homestead, today, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    private static MoneyReport report(Homestead homestead, List<Receipt> receipts) {
        return MoneyReport.of(new Books(homestead, season(homestead, TODAY), receipts, TODAY));
    }

    private static Money eur(String amount) {
        return Cash.of(new BigDecimal(amount), "EUR");
    }

    private static Receipt receipt(
            LocalDate on,
            LineKind kind,
            @Nullable String material,
            String packs,
            String amount,
            @Nullable String stage) {
        ReceiptLine line = new ReceiptLine(
                kind,
                "Thing",
                material,
                new BigDecimal(packs),
                null,
                eur(amount),
                List.of(Share.all("wood-store", stage)));
        return new Receipt(
                "r-" + kind, on, "Yard", ReceiptState.PAID, List.of(line), eur("0"), eur("0"), eur("0"), null, null);
    }

    @Test
    void the_whole_is_what_the_note_works_out_and_each_trip_is_shared_by_hours() {
        assertThat(PLAIN.forecast().whole().expected()).isEqualTo(eur("711.80"));
        // 36 over 5, 3 and 4 of 12 h; 36 over 6, 2, 5 and 2 of 15 h
        assertThat(PLAIN.coming().stream().filter(c -> c.purpose() == Purpose.DRIVE))
                .extracting(Coming::stage, Coming::expected)
                .containsExactly(
                        tuple("dig", eur("15.00")),
                        tuple("gravel", eur("9.00")),
                        tuple("posts", eur("12.00")),
                        tuple("beams", eur("14.40")),
                        tuple("oil", eur("4.80")),
                        tuple("roof", eur("12.00")),
                        tuple("gutter", eur("4.80")));
        assertThat(new MoneyWords(PLAIN).verdict())
                .isEqualTo("Expected at the finish: €711.80 of €750.00 that may be spent, €38.20 under.");
    }

    @Test
    void each_trip_tells_the_cash_it_takes() {
        List<CashNeed> needs = CashNeed.of(PLAIN);
        assertThat(needs).extracting(CashNeed::sum).containsExactly(eur("293.80"), eur("418.00"));
        assertThat(needs.getFirst().byPurpose())
                .containsExactly(
                        entry(Purpose.PACKS, eur("233.80")),
                        entry(Purpose.DRIVE, eur("36.00")),
                        entry(Purpose.FOOD, eur("24.00")));
        assertThat(new TimeWords(PLAIN).next())
                .isEqualTo("For trip 1, 8–9 May 2027 have €293.80 ready: packs €233.80, drives €36.00, food €24.00.");
    }

    @Test
    void a_rise_moves_what_is_still_to_buy_and_nothing_else() {
        // 10 % of 591.80 and of 24 x 4.50
        assertThat(PLAIN.riseOf(null, BigDecimal.TEN)).isEqualTo(eur("59.18"));
        assertThat(PLAIN.riseOf("gravel-25", BigDecimal.TEN)).isEqualTo(eur("10.80"));
    }

    @Test
    void without_a_plan_the_packs_alone_are_counted() {
        MoneyReport report = MoneyReport.of(new Books(PLACE, null, List.of(), TODAY));
        assertThat(report.forecast().whole().expected()).isEqualTo(eur("591.80"));
        assertThat(new MoneyWords(report).notes()).anyMatch(n -> n.startsWith("The plan makes no trip"));
    }

    /** Tax of 10 %, 20 % paid down ten days ahead, a reserve, a permit half paid, two tools, trips by mass. */
    @Nested
    class WithAllThatCostsBesides {
        private final MoneyReport report =
                report(rich(), List.of(receipt(LocalDate.of(2027, 2, 10), LineKind.FEE, null, "1", "25.00", null)));

        private static Homestead rich() {
            Budgeting budgeting = new Budgeting(
                    BigDecimal.TEN,
                    new BigDecimal("5"),
                    new BigDecimal("20"),
                    TripSharing.BY_MASS,
                    List.of(new BudgetItem("Permit", BudgetKind.FEE, "wood-store", null, eur("60.00"), null)));
            List<Supplier> slow = PLACE.suppliers().stream()
                    .map(s -> new Supplier(s.key(), s.name(), 10, s.prices(), s.delivery()))
                    .toList();
            List<Tool> tools = PLACE.tools().stream()
                    .map(t -> new Tool(
                            t.key(),
                            t.name(),
                            t.count(),
                            t.draw(),
                            t.allDay(),
                            t.dutyPercent(),
                            t.surgeFactor(),
                            cost(t.key())))
                    .toList();
            Homestead priced = Changed.with(PLACE, "suppliers", slow);
            return Changed.with(Changed.with(priced, "tools", tools), "budgeting", budgeting);
        }

        private static @Nullable ToolCost cost(String tool) {
            return switch (tool) {
                case "trestle" -> new ToolCost(eur("120.00"), eur("50.00"), eur("2.00"), eur("15.00"), eur("10.00"));
                case "spirit-level" -> new ToolCost(eur("30.00"), eur("10.00"), null, eur("8.00"), null);
                default -> null;
            };
        }

        @Test
        void tools_are_hired_or_bought_over_all_their_days() {
            // trestle: 120 - 50 + 2 = 72 against 2 x 15 + 10 = 40; level: 30 - 10 = 20 against 3 x 8 = 24
            assertThat(report.tools())
                    .extracting(ToolChoice::key, ToolChoice::trips, ToolChoice::days, ToolChoice::buy, ToolChoice::cost)
                    .containsExactly(
                            tuple("spirit-level", 2, 3, true, eur("20.00")),
                            tuple("trestle", 1, 2, false, eur("40.00")));
            // 40 over 6 and 5 h of that trip
            assertThat(report.coming().stream().filter(c -> c.what().equals("trestle")))
                    .extracting(Coming::stage, Coming::expected)
                    .containsExactly(tuple("beams", eur("21.82")), tuple("roof", eur("18.18")));
        }

        @Test
        void a_trip_is_shared_by_the_mass_it_brings() {
            // 36 over 600 kg of gravel and 9 x 25 + 4 x 10 kg of posts
            assertThat(report.coming().stream().filter(c -> c.purpose() == Purpose.DRIVE && c.on().equals(FIRST)))
                    .extracting(Coming::stage, Coming::expected)
                    .containsExactly(tuple("gravel", eur("24.97")), tuple("posts", eur("11.03")));
        }

        @Test
        void cash_is_told_by_what_falls_due_until_each_trip_and_after() {
            List<CashNeed> needs = CashNeed.of(report);
            // 20 % of 118.80, 61.38 and 77.00; the rest of them; drive; food; level; what is left of the permit
            assertThat(needs.getFirst().byPurpose())
                    .containsExactly(
                            entry(Purpose.PACKS, eur("205.74")),
                            entry(Purpose.PAID_DOWN, eur("51.44")),
                            entry(Purpose.DRIVE, eur("36.00")),
                            entry(Purpose.FOOD, eur("24.00")),
                            entry(Purpose.TOOL, eur("30.00")),
                            entry(Purpose.ITEM, eur("35.00")));
            // 358 with tax, drive, food, hire; then the level is sold
            assertThat(needs).extracting(CashNeed::sum).containsExactly(eur("382.18"), eur("493.80"), eur("-10.00"));
            assertThat(needs.getLast().together())
                    .isEqualTo(report.forecast().whole().toBuy())
                    .isEqualTo(eur("865.98"));
        }

        @Test
        void the_reserve_stands_beside_the_budget_and_in_no_sum() {
            // 5 % of 25.00 + 865.98 = 44.549
            assertThat(report.budget().whole()).isEqualTo(eur("890.98"));
            assertThat(report.budget().reserveOf("wood-store")).isEqualTo(eur("44.55"));
        }

        @Test
        void months_over_the_limit_are_named() {
            // the plan was made without it
            Homestead limited = rich().withSpendingLimit(new SpendingLimit(eur("600.00"), false));
            MoneyReport tight = MoneyReport.of(new Books(limited, season(rich(), TODAY), List.of(), TODAY));
            // April: 51.44 paid down. May: 890.98 - 51.44 with nothing of the permit paid
            assertThat(MonthMoney.of(tight)).extracting(MonthMoney::sum).containsExactly(eur("51.44"), eur("839.54"));
            assertThat(new TimeWords(tight).affordable()).startsWith("Over €600.00 a month: May 2027 by €239.54.");
        }
    }

    /** A weekend costs 36 for the drive and 24 for two days of food; all in all it is 711.80. */
    @Nested
    class OnATripThatIsUnderWay {
        private static final LocalDate SUNDAY = FIRST.plusDays(1);

        private static MoneyReport on(LocalDate today, Receipt... receipts) {
            return MoneyReport.of(new Books(PLACE, season(PLACE, today), List.of(receipts), today));
        }

        private static Receipt written() {
            return written(FIRST, SUNDAY, "24.00");
        }

        private static Receipt written(LocalDate first, LocalDate last, String food) {
            TripCost cost = new TripCost(new TripCost.Flat(eur("36.00")), eur("0"), eur(food));
            List<TripCost.Part> parts = List.of(new TripCost.Part("wood-store", "dig", 20, 0));
            DriveWords words = new DriveWords(UnitSystem.METRIC, "EUR");
            return new TripReceipt(first, last, cost, TripCost.Rule.BY_HOURS, parts, words).receipt();
        }

        private static Money ahead(MoneyReport report, LocalDate day) {
            return report.coming().stream()
                    .filter(c -> c.on().equals(day))
                    .filter(c -> c.purpose() == Purpose.DRIVE || c.purpose() == Purpose.FOOD)
                    .map(Coming::expected)
                    .reduce(eur("0"), Money::add);
        }

        @Test
        void a_trip_that_is_written_down_is_spent_and_no_longer_ahead() {
            assertThat(ahead(on(FIRST), FIRST)).isEqualTo(eur("60.00"));
            MoneyReport report = on(FIRST, written());
            assertThat(ahead(report, FIRST)).isEqualTo(eur("0"));
            assertThat(ahead(report, SECOND)).isEqualTo(eur("60.00"));
            assertThat(report.forecast().whole().spent()).isEqualTo(eur("60.00"));
            assertThat(report.forecast().whole().expected()).isEqualTo(eur("711.80"));
        }

        @Test
        void on_its_second_day_it_is_still_the_same_trip() {
            assertThat(ahead(on(SUNDAY, written()), SUNDAY)).isEqualTo(eur("0"));
        }

        @Test
        void one_that_began_the_evening_before_is_the_same_trip() {
            Receipt early = written(FIRST.minusDays(1), SUNDAY, "30.00");
            assertThat(ahead(on(FIRST, early), FIRST)).isEqualTo(eur("0"));
            assertThat(ahead(on(SUNDAY, early), SUNDAY)).isEqualTo(eur("0"));
        }

        @Test
        void food_of_days_it_does_not_tell_of_is_still_ahead() {
            Receipt saturday = written(FIRST, FIRST, "12.00");
            assertThat(ahead(on(FIRST, saturday), FIRST)).isEqualTo(eur("12.00"));
            assertThat(on(FIRST, saturday).forecast().whole().expected()).isEqualTo(eur("711.80"));
        }

        @Test
        void the_day_after_the_plan_knows_it_no_more_and_its_receipt_stays() {
            MoneyReport report = on(SUNDAY.plusDays(1), written());
            assertThat(report.coming()).extracting(Coming::on).allMatch(d -> d.isAfter(SUNDAY));
            assertThat(report.forecast().whole().spent()).isEqualTo(eur("60.00"));
        }

        @Test
        void fuel_of_its_days_and_the_day_before_is_taken_off_the_drive() {
            Receipt fuel = receipt(FIRST.minusDays(1), LineKind.FUEL, null, "1", "20.00", "dig");
            MoneyReport report = on(FIRST, fuel);
            assertThat(ahead(report, FIRST)).isEqualTo(eur("40.00"));
            assertThat(report.forecast().whole().expected()).isEqualTo(eur("711.80"));
            Receipt dear = receipt(FIRST, LineKind.FUEL, null, "1", "40.00", "dig");
            assertThat(ahead(on(FIRST, dear), FIRST)).isEqualTo(eur("24.00"));
            assertThat(on(FIRST, dear).forecast().whole().expected()).isEqualTo(eur("715.80"));
            Receipt earlier = receipt(FIRST.minusDays(2), LineKind.FUEL, null, "1", "20.00", "dig");
            assertThat(ahead(on(FIRST, earlier), FIRST)).isEqualTo(eur("60.00"));
        }

        @Test
        void what_receipts_hold_of_a_drive_is_one_drive_and_not_two() {
            Receipt fuel = receipt(FIRST, LineKind.FUEL, null, "1", "20.00", "dig");
            BigDecimal drives = on(FIRST, fuel).budget().items().stream()
                    .filter(i -> i.kind() == LineKind.FUEL)
                    .map(Baseline.Item::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(drives).isCloseTo(new BigDecimal("2"), within(new BigDecimal("0.0001")));
        }
    }

    @Nested
    class AgainstABudget {
        private final Baseline kept = PLAIN.budget();

        @Test
        void nothing_differs_on_the_day_it_was_kept() {
            assertThat(BudgetDifference.of(kept, PLAIN.budget())).isEmpty();
        }

        @Test
        void a_dearer_sack_one_more_bag_and_a_fee_are_told_apart() {
            Homestead dearer = Changed.with(
                    PLACE.withStages(PLACE.stages().stream()
                            .map(s -> s.key().equals("posts")
                                    ? s.withNeeds(List.of(new Need("post-concrete-25", 10), new Need("post", 4)))
                                    : s)
                            .toList()),
                    "suppliers",
                    List.of(withPrice(PLACE.suppliers().getFirst(), "gravel-25", "5.00")));
            MoneyReport now =
                    report(dearer, List.of(receipt(LocalDate.of(2027, 2, 10), LineKind.FEE, null, "1", "25.00", null)));
            Money none = eur("0.00");
            // 24 x 0.50; 1 x 6.20; a fee that was not in the budget
            assertThat(BudgetDifference.of(kept, now.budget()))
                    .extracting(d -> d.thing().stage(), BudgetDifference::difference)
                    .containsExactly(
                            tuple(null, new Difference(none, none, eur("25.00"))),
                            tuple("gravel", new Difference(eur("12.00"), none, none)),
                            tuple("posts", new Difference(none, eur("6.20"), none)));
            assertThat(new BudgetWords(now, kept).verdict())
                    .isEqualTo("Against the budget of Mon 1 Mar 2027, €711.80: €43.20 over. Prices make €12.00 more,"
                            + " quantities make €6.20 more, what is new or gone make €25.00 more.");
            MadeWords words = new MadeWords(now, kept);
            assertThat(BudgetDifference.of(kept, now.budget()).stream().map(words::sums))
                    .containsExactly(
                            List.of("New: €25.00 now less €0.00 in the budget is €25.00 over."),
                            List.of(
                                    "By quantity: as many as in the budget.",
                                    "By price: 24 packs by the budget would come to €108.00 and come to €120.00:"
                                            + " €12.00 over."),
                            List.of(
                                    "By quantity: 1 pack more, at €55.80 for 9 packs as budgeted, is €6.20 over.",
                                    "By price: 10 packs come to €62.00, as they would have by the budget."));
        }

        @Test
        void what_is_there_what_is_on_order_and_what_is_still_to_buy_are_told_apart() {
            ReceiptLine sacks = new ReceiptLine(
                    LineKind.MATERIAL,
                    "Gravel",
                    "gravel-25",
                    new BigDecimal("10"),
                    null,
                    eur("50.00"),
                    List.of(Share.all("wood-store", "gravel")));
            Receipt order = new Receipt(
                    "o",
                    TODAY,
                    "Yard",
                    ReceiptState.ORDERED,
                    List.of(sacks),
                    eur("0"),
                    eur("0"),
                    eur("20.00"),
                    null,
                    null);
            MoneyReport now = report(PLACE, List.of(order));
            BudgetDifference gravel = BudgetDifference.of(kept, now.budget()).getFirst();
            MadeWords words = new MadeWords(now, kept);
            // 10 for 50 in place of 45; 14 more at 4.50
            assertThat(words.table(gravel).rows())
                    .containsExactly(
                            List.of("In the budget of Mon 1 Mar 2027", "24 packs", "€4.50", "€108.00"),
                            List.of("Bought and on order", "10 packs", "€5.00", "€50.00"),
                            List.of("of it spent so far", "–", "–", "€20.00"),
                            List.of("of it on order, still to pay", "–", "–", "€30.00"),
                            List.of("Still to buy", "14 packs", "€4.50", "€63.00"),
                            List.of("Now in all", "24 packs", "€4.71", "€113.00"));
            assertThat(words.sums(gravel))
                    .contains("By price: 24 packs by the budget would come to €108.00 and come to €113.00:"
                            + " €5.00 over.");
        }

        private static Supplier withPrice(Supplier supplier, String material, String amount) {
            return new Supplier(
                    supplier.key(),
                    supplier.name(),
                    supplier.leadDays(),
                    supplier.prices().stream()
                            .map(p -> p.material().equals(material) ? new Price(material, eur(amount), p.on()) : p)
                            .toList(),
                    supplier.delivery());
        }

        /** Gravel is done on 8 May for 118 in place of 123, digging is not: both were to be. */
        @Test
        void work_is_worth_what_it_was_to_cost_once_it_is_finished() {
            LocalDate later = FIRST.plusDays(2);
            Homestead begun = PLACE.withStages(PLACE.stages().stream()
                    .map(s -> s.key().equals("gravel")
                            ? new org.firmset.homestead.Stage(
                                    s.key(),
                                    s.name(),
                                    s.subproject(),
                                    s.labour(),
                                    s.crew(),
                                    s.layout(),
                                    s.leastBlock(),
                                    s.mostPerDay(),
                                    s.energyPerHour(),
                                    s.tools(),
                                    s.season(),
                                    s.notBefore(),
                                    s.notAfter(),
                                    s.conditions(),
                                    s.needs(),
                                    s.hazards(),
                                    new Progress(FIRST, Hours.NONE, FIRST),
                                    s.note(),
                                    s.toolTimes(),
                                    s.headLamp(),
                                    s.water())
                            : s)
                    .toList());
            Receipt gravel = receipt(FIRST, LineKind.MATERIAL, "gravel-25", "24", "118.00", "gravel");
            MoneyReport now = MoneyReport.of(new Books(begun, null, List.of(gravel), later));
            // to be finished by 9 May: 25 for digging, 123 for gravel, 145.80 for the posts
            assertThat(now.worth(kept))
                    .isEqualTo(new EarnedValue(eur("293.80"), eur("123.00"), eur("118.00"), eur("711.80")));
            assertThat(new BudgetWords(now, kept).worth())
                    .contains(
                            "By the budget, work worth €293.80 was to be finished by now, and work worth €123.00 is:"
                                    + " behind by €170.80.",
                            "The finished work cost €118.00, under by €5.00.");
        }
    }

    @Test
    void what_is_on_order_is_committed_and_its_rest_falls_due_when_it_comes() {
        ReceiptLine sheets = new ReceiptLine(
                LineKind.MATERIAL,
                "Sheets",
                "roof-sheet",
                new BigDecimal("5"),
                null,
                eur("120.00"),
                List.of(Share.all("wood-store", "roof")));
        Receipt order = new Receipt(
                "o",
                TODAY.minusDays(3),
                "Building yard",
                ReceiptState.ORDERED,
                List.of(sheets),
                eur("0"),
                eur("0"),
                eur("30.00"),
                null,
                null);
        MoneyReport report = report(PLACE, List.of(order));
        assertThat(report.forecast().whole().spent()).isEqualTo(eur("30.00"));
        assertThat(report.forecast().whole().committed()).isEqualTo(eur("90.00"));
        assertThat(report.forecast().whole().expected()).isEqualTo(eur("711.80"));
        assertThat(report.payments())
                .contains(new Payment(SECOND, Purpose.REST_OF_ORDER, "Building yard", eur("90.00")));
        Course course = Course.of(report);
        assertThat(course.real().getLast()).isEqualTo(new Course.Point(TODAY, eur("30.00")));
        assertThat(course.ahead().getLast()).isEqualTo(new Course.Point(SECOND, eur("711.80")));
        assertThat(Objects.requireNonNull(report.paid().get(TODAY.minusDays(3))))
                .isEqualTo(eur("30.00"));
    }

    @Test
    void packs_that_lie_there_are_worth_what_was_paid_for_them() {
        Homestead stocked = Changed.with(
                PLACE, "stock", List.of(new org.firmset.homestead.StockLot("post", 3, LocalDate.of(2027, 2, 10))));
        Receipt posts = receipt(LocalDate.of(2027, 2, 10), LineKind.MATERIAL, "post", "5", "80.00", "posts");
        MoneyReport report = report(stocked, List.of(posts));
        // 3 of 5 for 80; all are used, so nothing is left at the finish
        assertThat(report.leftOver())
                .containsExactly(new LeftOver("post", 3, eur("48.00"), 0, 0, eur("0.00"), 0, eur("0.00")));
    }
}
