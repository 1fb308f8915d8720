package org.firmset.plan.check;

import static java.util.stream.Collectors.toSet;

import java.math.BigInteger;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.SiteDay;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/** Rule 9: no calendar month takes more money than a hard limit allows. A soft limit is no rule. */
final class MoneyRules {
    private final Facts facts;
    private final Breaches breaches;
    private final Map<YearMonth, Spending> months = new TreeMap<>();

    MoneyRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        SpendingLimit limit = facts.problem().spending();
        if (limit != null && limit.hard()) {
            madeTrips().forEach(trip -> month(trip.firstDate()).onTrip(trip));
            facts.schedule().runs().forEach(this::payRun);
            facts.schedule().generator().forEach(use -> month(use.date()).onFuel(use));
            months.forEach((month, spending) -> isWithin(limit, month, spending));
        }
    }

    private Spending month(LocalDate date) {
        long fuel = facts.problem().site().generatorCentsPerKilowattHour();
        return months.computeIfAbsent(YearMonth.from(date), month -> new Spending(fuel));
    }

    /** A run that names one trip and goes on a date of another makes both, so that no wrong name hides what a trip costs. */
    private List<Trip> madeTrips() {
        List<Run> runs = facts.schedule().runs();
        Set<String> named = runs.stream().map(Run::trip).collect(toSet());
        Stream<LocalDate> ofBlocks = facts.schedule().blocks().stream().map(WorkBlock::date);
        Set<LocalDate> dates =
                Stream.concat(ofBlocks, runs.stream().map(Run::date)).collect(toSet());
        return facts.problem().trips().stream()
                .filter(trip -> named.contains(trip.id())
                        || trip.days().stream().map(SiteDay::date).anyMatch(dates::contains))
                .toList();
    }

    /** What a run of an unknown trip or offer costs cannot be said; that it is unknown is a breach of its own. */
    private void payRun(Run run) {
        Spending month = month(run.date());
        facts.cargo(run).forEach(month::onPacks);
        switch (run.kind()) {
            case ARRIVAL -> {}
            case EXTRA -> facts.trip(run.trip()).ifPresent(month::onExtraRun);
            case DELIVERY -> facts.offer(run.offer()).ifPresent(offer -> month.onDelivery(offer, facts.cargo(run)));
        }
    }

    private void isWithin(SpendingLimit limit, YearMonth month, Spending spending) {
        BigInteger cents = spending.cents();
        if (cents.compareTo(BigInteger.valueOf(limit.centsAMonth())) > 0) {
            breaches.add(
                    Rule.MONEY,
                    "%s takes %s cents but may take %s: %s",
                    month,
                    cents,
                    limit.centsAMonth(),
                    spending.inWords());
        }
    }
}
