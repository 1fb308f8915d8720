package org.firmset.season.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.DeliveryTerms;
import org.firmset.homestead.Supplier;
import org.firmset.measure.Cash;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.season.load.DeliveryMoney;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Allocation;
import org.firmset.spend.LineKind;
import org.firmset.spend.Outstanding;
import org.firmset.spend.PriceBook;
import org.firmset.spend.ToBuy;
import org.javamoney.moneta.Money;

/** Packs and deliveries that are still to be paid. */
final class PacksAhead {
    private final Books books;
    private final Pricing pricing;
    private final Ledger ledger;
    private final Map<String, Bearer> bearers;
    private final Map<String, Supplier> suppliers;

    PacksAhead(Books books, Pricing pricing, Ledger ledger) {
        this.books = books;
        this.pricing = pricing;
        this.ledger = ledger;
        bearers = books.bearers();
        suppliers =
                books.homestead().suppliers().stream().collect(Collectors.toMap(Supplier::key, Function.identity()));
    }

    /** Without a plan: what the stages need, as if it were to be bought today. */
    void write(PriceBook book) {
        Outstanding open = Outstanding.of(books.homestead(), books.purchases().orders(), book, books.today());
        ledger.unpriced.addAll(open.unpriced());
        for (ToBuy buy : open.toBuy()) {
            Pricing.Pack price = pricing.of(buy.material(), null).orElseThrow();
            Bearer bearer = bearers.getOrDefault(String.valueOf(buy.stage()), Bearer.NOBODY);
            write(bearer, buy.material(), buy.packs(), price, books.today());
            pay(price, buy.packs(), books.today(), books.today(), buy.material());
        }
    }

    /** By the plan: what its runs bring and is not on order. */
    void write(PlannedSeason season, List<Brought> brought, Orders orders) {
        Map<Run, List<Brought>> byRun =
                brought.stream().collect(Collectors.groupingBy(Brought::run, LinkedHashMap::new, Collectors.toList()));
        DeliveryMoney deliveries = new DeliveryMoney(season.problem());
        byRun.forEach((run, packs) -> {
            packs.stream().filter(p -> !p.onOrder()).forEach(this::buy);
            if (run.kind() == RunKind.DELIVERY) {
                long fee = orders.feeLeft(supplier(run), deliveries.fees(run));
                deliver(season, run, packs, books.cents(fee));
            }
        });
    }

    private Supplier supplier(Run run) {
        return Objects.requireNonNull(suppliers.get(run.offer()));
    }

    /** Water costs nothing. */
    private void buy(Brought packs) {
        Run run = packs.run();
        if (packs.material().equals(WaterWriter.ID)) {
            return;
        }
        boolean comes = run.kind() == RunKind.DELIVERY;
        Optional<Pricing.Pack> price = pricing.of(packs.material(), comes ? run.offer() : null);
        if (price.isEmpty()) {
            ledger.unpriced.add(packs.material());
            return;
        }
        Bearer bearer = packs.stage() == null ? Bearer.NOBODY : bearers.getOrDefault(packs.stage(), Bearer.NOBODY);
        write(bearer, packs.material(), packs.packs(), price.get(), run.date());
        LocalDate ordered =
                run.date().minusDays(leadDays(comes ? run.offer() : price.get().supplier(), comes));
        pay(price.get(), packs.packs(), ordered, run.date(), packs.material());
    }

    private int leadDays(String supplier, boolean comes) {
        Supplier known = suppliers.get(supplier);
        DeliveryTerms terms = known == null ? null : known.delivery();
        return known == null ? 0 : comes && terms != null ? terms.leadDays() : known.leadDays();
    }

    private void write(Bearer bearer, String material, int packs, Pricing.Pack price, LocalDate on) {
        ledger.coming.add(new Coming(
                bearer.subproject(),
                bearer.stage(),
                Purpose.PACKS,
                LineKind.MATERIAL,
                material,
                BigDecimal.valueOf(packs),
                pricing.taxed(price.now(), packs),
                pricing.taxed(price.low(), packs),
                pricing.taxed(price.high(), packs),
                on));
    }

    /** What is ordered ahead is paid down in part on that day, the rest when it comes. */
    private void pay(Pricing.Pack price, int packs, LocalDate ordered, LocalDate comes, String material) {
        Money all = pricing.taxed(price.now(), packs);
        BigDecimal percent =
                ordered.isBefore(comes) ? books.homestead().budgetingOrPlain().paidDownPercent() : BigDecimal.ZERO;
        Money down = Cash.of(
                Cash.amountOf(all).multiply(percent).movePointLeft(2).setScale(2, RoundingMode.HALF_EVEN),
                books.currency());
        LocalDate due = ordered.isBefore(books.today()) ? books.today() : ordered;
        if (!down.isZero()) {
            ledger.payments.add(new Payment(due, Purpose.PAID_DOWN, material, down));
        }
        ledger.payments.add(new Payment(comes, Purpose.PACKS, material, all.subtract(down)));
    }

    /** A delivery is borne by the stages it brings something for, by mass. */
    private void deliver(PlannedSeason season, Run run, List<Brought> packs, Money fee) {
        if (fee.isZero()) {
            return;
        }
        Map<Bearer, Long> grams = grams(season, packs);
        List<Money> parts = Allocation.split(
                fee, grams.values().stream().map(BigDecimal::valueOf).toList());
        int i = 0;
        for (Bearer bearer : grams.keySet()) {
            ledger.coming.add(Coming.certain(
                    bearer, Purpose.DELIVERY, LineKind.FEE, run.offer(), BigDecimal.ZERO, parts.get(i++), run.date()));
        }
        ledger.payments.add(new Payment(run.date(), Purpose.DELIVERY, run.offer(), fee));
    }

    /** Mass by who bears it, at least one. */
    Map<Bearer, Long> grams(PlannedSeason season, List<Brought> packs) {
        Map<String, Long> each =
                season.problem().materials().stream().collect(Collectors.toMap(m -> m.id(), m -> m.grams()));
        Map<Bearer, Long> grams = new LinkedHashMap<>();
        for (Brought some : packs) {
            Bearer bearer = some.stage() == null ? Bearer.NOBODY : bearers.getOrDefault(some.stage(), Bearer.NOBODY);
            grams.merge(bearer, some.packs() * Objects.requireNonNull(each.get(some.material())), Long::sum);
        }
        return grams;
    }
}
