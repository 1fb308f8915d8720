package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.OpenTrip;
import org.firmset.measure.Cash;
import org.firmset.measure.Dimension;
import org.firmset.measure.Length;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.spend.TripCost.Drive;
import org.firmset.spend.TripCost.OnReceipts;
import org.firmset.spend.TripCost.Part;
import org.firmset.spend.TripCost.Rule;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A trip that was made becomes one receipt. Figures worked out by hand. */
class TripReceiptTest {
    private static final LocalDate SATURDAY = LocalDate.of(2026, 9, 12);
    private static final DriveWords US = new DriveWords(UnitSystem.US, "USD");
    private static final DriveWords METRIC = new DriveWords(UnitSystem.METRIC, "EUR");
    private static final Part TRACK = part("water", "water-track", 26, 90_000);
    private static final Part BASE = part("shop", "shop-base", 14, 30_000);

    @Test
    void drive_tolls_and_food_are_three_lines_each_shared_by_hours_to_the_cent() {
        // 186 mi at 70 cents = 130.20; 6.5 and 3.5 of 10 h
        Receipt receipt = trip(
                        US.byRate(mi("186"), new BigDecimal("0.70")), "6.00", "76.00", Rule.BY_HOURS, TRACK, BASE)
                .receipt();
        assertThat(receipt.lines())
                .extracting(ReceiptLine::kind, ReceiptLine::text, ReceiptLine::amount)
                .containsExactly(
                        tuple(LineKind.FUEL, "Drive, 12 to 13 Sep 2026, 186 mi at 0.7 USD a mi", usd("130.20")),
                        tuple(LineKind.FUEL, "Tolls, 12 to 13 Sep 2026", usd("6.00")),
                        tuple(LineKind.OTHER, "Food, 12 to 13 Sep 2026", usd("76.00")));
        assertThat(receipt.lines().getFirst().shares())
                .containsExactly(
                        new Share("water", "water-track", new BigDecimal("6.5")),
                        new Share("shop", "shop-base", new BigDecimal("3.5")));
        assertThat(ReceiptCosts.of(receipt))
                .extracting(ReceiptCosts.Cost::stage, ReceiptCosts.Cost::amount)
                .containsExactly(
                        tuple("water-track", usd("84.63")),
                        tuple("shop-base", usd("45.57")),
                        tuple("water-track", usd("3.90")),
                        tuple("shop-base", usd("2.10")),
                        tuple("water-track", usd("49.40")),
                        tuple("shop-base", usd("26.60")));
        assertThat(receipt.sum()).isEqualTo(usd("212.20"));
        assertThat(receipt.paid()).isEqualTo(usd("212.20"));
        assertThat(receipt.date()).isEqualTo(SATURDAY);
        assertThat(TripReceipt.is(receipt)).isTrue();
    }

    @Test
    void it_is_shared_by_the_mass_brought_and_equally_when_none_is_written() {
        // 90 and 30 kg of 120
        TripReceipt byMass = trip(US.sum(usd("100.00")), "0", "0", Rule.BY_MASS, TRACK, BASE);
        assertThat(ReceiptCosts.of(byMass.receipt()))
                .extracting(ReceiptCosts.Cost::amount)
                .containsExactly(usd("75.00"), usd("25.00"));
        assertThat(byMass.ruleUsed()).isEqualTo(Rule.BY_MASS);
        TripReceipt equally = trip(
                US.sum(usd("100.01")), "0", "0", Rule.BY_MASS, part("water", null, 9, 0), part("shop", null, 2, 0));
        assertThat(ReceiptCosts.of(equally.receipt()))
                .extracting(ReceiptCosts.Cost::amount)
                .containsExactly(usd("50.01"), usd("50.00"));
        assertThat(equally.ruleUsed()).isEqualTo(Rule.EQUALLY);
    }

    @Test
    void who_has_no_hours_beside_others_bears_nothing_and_who_is_named_twice_bears_both() {
        TripReceipt trip =
                trip(US.sum(usd("90.00")), "0", "0", Rule.BY_HOURS, TRACK, part("cabin", null, 0, 5), BASE, BASE);
        assertThat(trip.receipt().lines().getFirst().shares())
                .containsExactly(
                        new Share("water", "water-track", new BigDecimal("6.5")),
                        new Share("shop", "shop-base", new BigDecimal("7")));
        TripReceipt twice =
                trip(US.sum(usd("90.00")), "0", "0", Rule.BY_HOURS, part("shop", null, 0, 0), part("shop", null, 0, 0));
        assertThat(twice.receipt().lines().getFirst().shares()).containsExactly(Share.all("shop", null));
        assertThat(trip(US.sum(usd("9.00")), "0", "0", Rule.BY_HOURS)
                        .receipt()
                        .lines()
                        .getFirst()
                        .shares())
                .isEmpty();
    }

    @Test
    void fuel_is_counted_by_miles_on_a_gallon_or_by_litres_for_100_km() {
        // 186 / 15 = 12.4 gal at 4.199 = 52.0676; 300 km x 8.5 / 100 = 25.5 L at 1.459 = 37.2045
        Drive us = US.byFuel(mi("186"), new BigDecimal("15"), new BigDecimal("4.199"));
        Drive metric = METRIC.byFuel(km("300"), new BigDecimal("8.5"), new BigDecimal("1.459"));
        assertThat(us.cost()).isEqualTo(usd("52.07"));
        assertThat(metric.cost()).isEqualTo(Cash.parse("37.20 EUR"));
        assertThat(US.of(us)).isEqualTo("186 mi, 15 mi on a gal, 4.199 USD a gal");
        assertThat(METRIC.of(metric)).isEqualTo("300 km, 8.5 L for 100 km, 1.459 EUR a L");
    }

    @Test
    void tolls_beside_fuel_that_has_receipts_of_its_own_are_not_one_drive_more() {
        Receipt receipt =
                trip(new OnReceipts("USD"), "6.00", "0", Rule.BY_HOURS, TRACK).receipt();
        assertThat(receipt.lines())
                .extracting(ReceiptLine::kind, ReceiptLine::amount)
                .containsExactly(tuple(LineKind.OTHER, usd("6.00")));
    }

    @Test
    void a_trip_that_costs_nothing_has_no_line_and_is_refused() {
        Receipt receipt = trip(US.sum(usd("0")), "0", "0", Rule.BY_HOURS, TRACK).receipt();
        assertThat(receipt.lines()).isEmpty();
        assertThat(trip(US.sum(usd("0")), "0", "0", Rule.BY_HOURS, TRACK).borne())
                .extracting(TripCost.Borne::amount)
                .containsExactly(usd("0"));
        assertThat(new ReceiptRules(RandomReceipts.KEYS, "USD").faults(receipt, ""))
                .extracting(f -> f.problem())
                .containsExactly("holds no line");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-09-12, 2026-09-12, 12 Sep 2026",
        "2026-09-12, 2026-09-13, 12 to 13 Sep 2026",
        "2027-07-31, 2027-08-01, 31 Jul to 1 Aug 2027",
        "2026-12-31, 2027-01-01, 31 Dec 2026 to 1 Jan 2027",
        "2026-09-12, 2027-09-13, 12 Sep 2026 to 13 Sep 2027"
    })
    void days_are_said_once(LocalDate first, LocalDate last, String words) {
        TripCost nothing = new TripCost(new OnReceipts("USD"), usd("0"), usd("0"));
        assertThat(new TripReceipt(first, last, nothing, Rule.BY_HOURS, List.of(), US).days())
                .isEqualTo(words);
    }

    @Test
    void a_trip_does_not_end_before_it_begins() {
        TripCost nothing = new TripCost(new OnReceipts("USD"), usd("0"), usd("0"));
        assertThatThrownBy(
                        () -> new TripReceipt(SATURDAY, SATURDAY.minusDays(1), nothing, Rule.BY_HOURS, List.of(), US))
                .hasMessageContaining("[2026-09-11]");
    }

    @Test
    void what_was_typed_of_a_drive_is_read_back_from_its_receipt() {
        Drive rate = US.byRate(mi("186"), new BigDecimal("0.725"));
        assertThat(typed(rate, US)).isEqualTo(new DriveWords.Typed(DriveWay.RATE, "0.725", "", ""));
        // what was typed in other units is not offered as if it were in these
        assertThat(typed(rate, METRIC).way()).isEqualTo(DriveWay.SUM);
        Drive fuel = US.byFuel(mi("186.4"), new BigDecimal("15.5"), new BigDecimal("4.199"));
        assertThat(typed(fuel, US)).isEqualTo(new DriveWords.Typed(DriveWay.FUEL, "", "15.5", "4.199"));
        assertThat(typed(US.sum(usd("5.00")), US).way()).isEqualTo(DriveWay.SUM);
        assertThat(typed(new OnReceipts("USD"), US).way()).isEqualTo(DriveWay.ON_RECEIPTS);
    }

    private static DriveWords.Typed typed(Drive drive, DriveWords words) {
        return TripReceipt.typed(
                trip(drive, "1.00", "1.00", Rule.BY_HOURS, TRACK).receipt(), words);
    }

    @Test
    void fuel_and_food_of_its_days_and_the_day_before_may_be_the_same_cost() {
        TripReceipt trip = trip(US.sum(usd("90.00")), "0", "30.00", Rule.BY_HOURS, TRACK);
        assertThat(TripTwice.of(trip, other(SATURDAY.minusDays(1), LineKind.FUEL)))
                .contains(TripTwice.DRIVE);
        assertThat(TripTwice.of(trip, other(SATURDAY.plusDays(1), LineKind.OTHER)))
                .contains(TripTwice.FOOD);
        assertThat(TripTwice.of(trip, trip.receipt())).contains(TripTwice.TRIP);
        assertThat(TripTwice.of(trip, other(SATURDAY, LineKind.MATERIAL))).isEmpty();
        assertThat(TripTwice.of(trip, other(SATURDAY.minusDays(2), LineKind.FUEL)))
                .isEmpty();
        assertThat(TripTwice.of(trip, other(SATURDAY.plusDays(2), LineKind.FUEL)))
                .isEmpty();
        TripReceipt foodOnly = trip(new OnReceipts("USD"), "6.00", "30.00", Rule.BY_HOURS, TRACK);
        assertThat(TripTwice.of(foodOnly, other(SATURDAY, LineKind.FUEL))).isEmpty();
        TripReceipt tollsOnly = trip(new OnReceipts("USD"), "6.00", "0", Rule.BY_HOURS, TRACK);
        assertThat(TripTwice.of(tollsOnly, other(SATURDAY, LineKind.OTHER))).isEmpty();
    }

    @Test
    void a_trip_that_began_earlier_and_ended_later_holds_its_days_too() {
        TripReceipt sunday = new TripReceipt(
                SATURDAY.plusDays(1),
                SATURDAY.plusDays(1),
                new TripCost(US.sum(usd("90.00")), usd("0"), usd("0")),
                Rule.BY_HOURS,
                List.of(TRACK),
                US);
        Receipt week = days(SATURDAY.minusDays(3), SATURDAY.plusDays(3));
        assertThat(TripTwice.of(sunday, week)).contains(TripTwice.TRIP);
        assertThat(TripTwice.of(sunday, days(SATURDAY.minusDays(3), SATURDAY.minusDays(1))))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2026-09-12, 2026-09-12", "2026-09-12, 2026-09-13", "2026-07-31, 2026-08-01", "2026-12-31, 2027-01-02"})
    void its_days_are_read_back_from_its_receipt(LocalDate first, LocalDate last) {
        Receipt trip = days(first, last);
        assertThat(TripReceipt.daysOf(trip)).isEqualTo(new OpenTrip(first, last));
        // of a date that was changed since, the words tell no more
        Receipt moved = trip.withDate(first.minusDays(20));
        assertThat(TripReceipt.daysOf(moved)).isEqualTo(new OpenTrip(first.minusDays(20), first.minusDays(20)));
    }

    @Test
    void a_trip_whose_words_were_changed_is_of_its_date() {
        Receipt trip = new Receipt(
                "t",
                SATURDAY,
                TripReceipt.SUPPLIER,
                ReceiptState.PAID,
                other(SATURDAY, LineKind.FUEL).lines(),
                usd("0"),
                usd("0"),
                usd("0"),
                null,
                null);
        assertThat(TripReceipt.daysOf(trip)).isEqualTo(new OpenTrip(SATURDAY, SATURDAY));
    }

    private static Receipt days(LocalDate first, LocalDate last) {
        TripCost cost = new TripCost(new OnReceipts("USD"), usd("0"), usd("10.00"));
        return new TripReceipt(first, last, cost, Rule.BY_HOURS, List.of(TRACK), US).receipt();
    }

    private static Receipt other(LocalDate on, LineKind kind) {
        ReceiptLine line = new ReceiptLine(kind, "Thing", null, BigDecimal.ONE, null, usd("9.00"), List.of());
        return new Receipt("r", on, "Shop", ReceiptState.PAID, List.of(line), usd("0"), usd("0"), usd("0"), null, null);
    }

    private static TripReceipt trip(Drive drive, String tolls, String food, Rule rule, Part... parts) {
        return new TripReceipt(
                SATURDAY, SATURDAY.plusDays(1), new TripCost(drive, usd(tolls), usd(food)), rule, List.of(parts), US);
    }

    private static Part part(String subproject, @Nullable String stage, long quarters, long grams) {
        return new Part(subproject, stage, quarters, grams);
    }

    private static Length mi(String miles) {
        return (Length) Units.parse(Dimension.LENGTH, miles + " mi");
    }

    private static Length km(String kilometres) {
        return (Length) Units.parse(Dimension.LENGTH, kilometres + " km");
    }

    private static Money usd(String amount) {
        return Cash.of(new BigDecimal(amount), "USD");
    }
}
