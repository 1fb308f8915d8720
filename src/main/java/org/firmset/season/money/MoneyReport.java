package org.firmset.season.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Heading;
import org.firmset.measure.Cash;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Baseline;
import org.firmset.spend.EarnedValue;
import org.firmset.spend.FinishedWork;
import org.firmset.spend.Forecast;
import org.firmset.spend.PriceBook;
import org.firmset.spend.TripCost;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * The money of a homestead on one day: spent, committed, still to pay and expected at the finish, what is to be paid when,
 * and today's budget, which is all of it put together.
 *
 * @param coming what will still be borne, by whom; {@link Forecast#whole()} counts it as still to buy
 * @param payments what is to be there when, the earliest first: they add up to what is coming and what is committed
 * @param made the trips that the plan makes, in order
 * @param tools the choices between hiring and buying, of tools that are not there yet
 * @param sharing how trips are shared
 * @param paid what left the purse on each day up to today, in order, refundable deposits left out
 * @param budget what was paid and what is coming as one budget of today
 * @param bought what of it stands on receipts
 */
public record MoneyReport(
        Homestead homestead,
        LocalDate today,
        Forecast forecast,
        List<Coming> coming,
        List<Payment> payments,
        List<Leg> made,
        List<ToolChoice> tools,
        TripCost.Rule sharing,
        PriceBook prices,
        Baseline budget,
        Map<Thing, Bought> bought,
        List<LeftOver> leftOver,
        Map<LocalDate, Money> paid) {
    /** What stands at the head of a budget that is kept as a document. */
    public static final Heading BUDGET = new Heading("firmset-budget", 1);

    /** A trip of the plan. @param number among those that are made, from 1 */
    public record Leg(int number, LocalDate first, LocalDate last) {}

    public static MoneyReport of(Books books) {
        PriceBook prices =
                PriceBook.withQuotes(books.homestead(), books.purchases().quotes());
        Ledger ledger = new Ledger();
        Orders orders = new Orders(books.purchases().orders());
        PacksAhead packs = new PacksAhead(books, new Pricing(books, prices), ledger);
        PlannedSeason season = books.season();
        List<MadeTrip> made = season == null ? List.of() : MadeTrip.of(season);
        List<ToolChoice> tools = List.of();
        List<Brought> brought = season == null ? List.of() : Brought.of(season, orders);
        if (season == null) {
            packs.write(prices);
        } else {
            packs.write(season, brought, orders);
            new TripsAhead(books, ledger, season, packs).write(made, brought);
            tools = new ToolsAhead(books, ledger).write(made);
        }
        new ItemsAhead(books, ledger).write(books.purchases().spent(), made);
        new OrdersAhead(books, ledger).write(orders.all(), brought, made);
        ledger.payments.sort(Comparator.comparing(Payment::on).thenComparing(Payment::purpose));
        BudgetWriter budget = new BudgetWriter(books, ledger.coming);
        return new MoneyReport(
                books.homestead(),
                books.today(),
                books.purchases().spent().with(ledger.coming, List.copyOf(ledger.unpriced)),
                List.copyOf(ledger.coming),
                List.copyOf(ledger.payments),
                legs(made),
                tools,
                TripsAhead.rule(books),
                prices,
                budget.write(),
                budget.bought(),
                LeftOver.of(books, ledger.coming),
                paidBy(books.today(), books.purchases().paid()));
    }

    private static List<Leg> legs(List<MadeTrip> made) {
        List<Leg> legs = new ArrayList<>();
        for (MadeTrip trip : made) {
            legs.add(new Leg(
                    legs.size() + 1, trip.trip().firstDate(), trip.trip().lastDate()));
        }
        return legs;
    }

    /**
     * Nothing was paid after today, whatever a receipt says that was taken in before its day: it counts as paid, so it
     * counts today.
     */
    private static Map<LocalDate, Money> paidBy(LocalDate today, Map<LocalDate, Money> paid) {
        Map<LocalDate, Money> days = new TreeMap<>();
        paid.forEach((day, amount) -> days.merge(day.isAfter(today) ? today : day, amount, Money::add));
        return Collections.unmodifiableMap(days);
    }

    /** The worth of the work by today against a kept budget; a stage counts when it is finished. */
    public EarnedValue worth(Baseline kept) {
        Forecast.Row actual = ofFinished();
        return kept.on(today, FinishedWork.of(homestead), actual.spent().add(actual.committed()));
    }

    /** What receipts tell of the stages that are finished. */
    Forecast.Row ofFinished() {
        Set<String> finished = FinishedWork.of(homestead).keySet();
        return forecast.sumOf(of -> of.stage() != null && finished.contains(of.stage()));
    }

    /** What receipts tell of a thing; nothing when there are none. */
    public Optional<Bought> bought(Thing thing) {
        return Optional.ofNullable(bought.get(thing));
    }

    /** By how much a rise moves the sum at the finish. @param material null for all packs */
    public Money riseOf(@Nullable String material, BigDecimal percent) {
        List<Coming> packs = coming.stream()
                .filter(c -> c.purpose() == Purpose.PACKS)
                .filter(c -> material == null || c.what().equals(material))
                .toList();
        Map<String, BigDecimal> rises = new HashMap<>();
        packs.forEach(c -> rises.put(c.what(), percent));
        return Forecast.riseOf(currency(), packs, rises);
    }

    public String currency() {
        return homestead.currency();
    }

    /** "$1,240.00". */
    public String show(Money amount) {
        return Cash.show(Cash.cents(amount), homestead.currency());
    }
}
