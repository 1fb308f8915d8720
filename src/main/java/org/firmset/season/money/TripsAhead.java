package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.firmset.homestead.OpenTrip;
import org.firmset.homestead.Travel;
import org.firmset.measure.Cash;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.WorkBlock;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Allocation;
import org.firmset.spend.LineKind;
import org.firmset.spend.TripCost;
import org.javamoney.moneta.Money;

/** Drives, food and the generator's fuel of the trips that the plan makes, shared over the stages they serve. */
final class TripsAhead {
    private final Books books;
    private final Ledger ledger;
    private final PlannedSeason season;
    private final PacksAhead packs;
    private final Map<String, Bearer> bearers;
    private final TripCost.Rule rule;

    TripsAhead(Books books, Ledger ledger, PlannedSeason season, PacksAhead packs) {
        this.books = books;
        this.ledger = ledger;
        this.season = season;
        this.packs = packs;
        bearers = books.bearers();
        rule = rule(books);
    }

    static TripCost.Rule rule(Books books) {
        return TripCost.Rule.of(books.homestead().budgetingOrPlain().tripsShared());
    }

    void write(List<MadeTrip> made, List<Brought> brought) {
        made.forEach(trip -> write(trip, brought));
        fuel(made);
    }

    /** All days of a trip, also those that are past when it is under way. */
    private OpenTrip daysOf(MadeTrip trip) {
        LocalDate first = trip.trip().firstDate();
        return OpenTrip.around(books.homestead().openDates(), first)
                .orElseGet(() -> new OpenTrip(first, trip.trip().lastDate()));
    }

    /** What was written down of a trip is spent: its drives, and the food of the days that are told of. */
    private void write(MadeTrip trip, List<Brought> brought) {
        List<TripCost.Part> parts = parts(
                trip,
                brought.stream()
                        .filter(b -> b.run().trip().equals(trip.trip().id()))
                        .toList());
        OpenTrip days = daysOf(trip);
        Set<LocalDate> written = books.purchases().trips();
        if (written.stream().noneMatch(days::holds)) {
            drives(trip, days, parts);
        }
        long fed = trip.trip().days().stream()
                .filter(d -> !written.contains(d.date()))
                .count();
        Money food = books.homestead().travel().costPerDay().multiply(fed);
        share(trip, parts, Purpose.FOOD, LineKind.OTHER, "food", food, 0);
    }

    private void drives(MadeTrip trip, OpenTrip days, List<TripCost.Part> parts) {
        Travel travel = books.homestead().travel();
        Money fuel = fuelOn(days);
        Money drive = travel.costPerTrip();
        // what receipts hold of a drive is one there, so only its price is still ahead
        share(trip, parts, Purpose.DRIVE, LineKind.FUEL, "drive", less(drive, fuel), fuel.isZero() ? 1 : 0);
        Money runs = travel.extraRunCost().multiply(trip.extraRuns());
        share(trip, parts, Purpose.DRIVE, LineKind.FUEL, "drive", less(runs, less(fuel, drive)), trip.extraRuns());
    }

    /** What receipts of a trip's days, or of the day before, tell of fuel: it is spent and must not be ahead as well. */
    private Money fuelOn(OpenTrip days) {
        LocalDate eve = days.first().minusDays(1);
        Money fuel = books.purchases().items().stream()
                .filter(i -> i.thing().kind() == LineKind.FUEL)
                .filter(i -> days.holds(i.on()) || i.on().equals(eve))
                .map(i -> i.bought().amount())
                .reduce(books.cents(0), Money::add);
        return fuel.isNegative() ? books.cents(0) : fuel;
    }

    /** At least nothing. */
    private Money less(Money whole, Money part) {
        Money rest = whole.subtract(part);
        return rest.isNegative() ? books.cents(0) : rest;
    }

    /** Stages that are worked on first, then those that something is brought for. */
    private List<TripCost.Part> parts(MadeTrip trip, List<Brought> brought) {
        Map<Bearer, Long> quarters = new LinkedHashMap<>();
        trip.quarters(trip.blocks())
                .forEach((stage, q) -> quarters.merge(bearers.getOrDefault(stage, Bearer.NOBODY), q, Long::sum));
        Map<Bearer, Long> grams = packs.grams(season, brought);
        Set<Bearer> all = new LinkedHashSet<>(quarters.keySet());
        all.addAll(grams.keySet());
        all.remove(Bearer.NOBODY);
        return all.stream()
                .map(b -> new TripCost.Part(
                        String.valueOf(b.subproject()),
                        b.stage(),
                        quarters.getOrDefault(b, 0L),
                        grams.getOrDefault(b, 0L)))
                .toList();
    }

    private void share(
            MadeTrip trip,
            List<TripCost.Part> parts,
            Purpose purpose,
            LineKind kind,
            String what,
            Money cost,
            long drives) {
        if (cost.isZero()) {
            return;
        }
        LocalDate on = trip.trip().firstDate();
        ledger.payments.add(new Payment(on, purpose, what, cost));
        if (parts.isEmpty()) {
            ledger.coming.add(Coming.certain(Bearer.NOBODY, purpose, kind, what, BigDecimal.valueOf(drives), cost, on));
            return;
        }
        Money none = books.cents(0);
        for (TripCost.Borne borne : new TripCost(new TripCost.Flat(cost), none, none).shared(rule, parts)) {
            BigDecimal part = Cash.amountOf(borne.amount())
                    .multiply(BigDecimal.valueOf(drives))
                    .divide(Cash.amountOf(cost), MathContext.DECIMAL32);
            if (!borne.amount().isZero()) {
                Bearer bearer =
                        new Bearer(borne.part().subproject(), borne.part().stage());
                ledger.coming.add(Coming.certain(bearer, purpose, kind, what, part, borne.amount(), on));
            }
        }
    }

    /** All that the plan counts for fuel, by the energy of each day and the work done on it. */
    private void fuel(List<MadeTrip> made) {
        List<GeneratorUse> uses = season.plan().schedule().generator().stream()
                .filter(u -> u.wattHours() > 0)
                .toList();
        long cents = season.plan().totals().generatorCents();
        if (uses.isEmpty() || cents == 0) {
            return;
        }
        List<Money> days = Allocation.split(
                books.cents(cents),
                uses.stream().map(u -> BigDecimal.valueOf(u.wattHours())).toList());
        for (int i = 0; i < uses.size(); i++) {
            LocalDate date = uses.get(i).date();
            List<WorkBlock> blocks = new ArrayList<>();
            made.forEach(
                    t -> t.blocks().stream().filter(b -> b.date().equals(date)).forEach(blocks::add));
            Map<String, Long> quarters = new LinkedHashMap<>();
            blocks.forEach(b -> quarters.merge(b.stage(), (long) b.quarters(), Long::sum));
            borne(quarters, days.get(i), date);
            ledger.payments.add(new Payment(date, Purpose.GENERATOR, "fuel", days.get(i)));
        }
    }

    private void borne(Map<String, Long> quarters, Money fuel, LocalDate date) {
        if (quarters.isEmpty()) {
            ledger.coming.add(Coming.certain(
                    Bearer.NOBODY, Purpose.GENERATOR, LineKind.FUEL, "fuel", BigDecimal.ZERO, fuel, date));
            return;
        }
        List<Money> parts = Allocation.split(
                fuel, quarters.values().stream().map(BigDecimal::valueOf).toList());
        int i = 0;
        for (String stage : quarters.keySet()) {
            ledger.coming.add(Coming.certain(
                    bearers.getOrDefault(stage, Bearer.NOBODY),
                    Purpose.GENERATOR,
                    LineKind.FUEL,
                    "fuel",
                    BigDecimal.ZERO,
                    parts.get(i++),
                    date));
        }
    }
}
