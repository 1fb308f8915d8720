package org.firmset.plan.check;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Rule;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;

/** Rule 4: the battery stays above its floor on every day of a trip. Sums are exact, in Wh. */
final class PowerRules {
    private final Facts facts;
    private final Breaches breaches;
    private final Map<LocalDate, BigInteger> generated = new TreeMap<>();

    PowerRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        facts.schedule().generator().forEach(this::isUseOnSiteDay);
        facts.schedule().generator().forEach(this::count);
        generated.forEach(this::isWithinGenerator);
        facts.problem().trips().forEach(this::staysAboveFloor);
    }

    private void isUseOnSiteDay(GeneratorUse use) {
        if (facts.siteDay(use.date()).isEmpty()) {
            breach("The generator gives %s Wh on %s, which is not a site day", use.wattHours(), use.date());
        }
        if (use.wattHours() < 0) {
            breach("The generator gives %s Wh on %s, which is less than none", use.wattHours(), use.date());
        }
    }

    private void count(GeneratorUse use) {
        generated.merge(use.date(), BigInteger.valueOf(Math.max(0, use.wattHours())), BigInteger::add);
    }

    private void isWithinGenerator(LocalDate date, BigInteger wattHours) {
        long most = facts.problem().site().generatorWattHoursPerDay();
        if (wattHours.compareTo(BigInteger.valueOf(most)) > 0) {
            breach("The generator gives %s Wh on %s but can give at most %s Wh on one day", wattHours, date, most);
        }
    }

    private void staysAboveFloor(Trip trip) {
        BigInteger usable = BigInteger.valueOf(facts.problem().site().usableWattHours());
        BigInteger charge = usable;
        for (SiteDay day : trip.days()) {
            BigInteger result = charge.add(broughtBy(day)).subtract(takenOn(day));
            if (result.signum() < 0) {
                breach(
                        "The battery is %s Wh under its floor on %s of trip [%s]: %s Wh in the battery, %s Wh from"
                                + " the sun and %s Wh from the generator against %s Wh of work",
                        result.negate(),
                        day.date(),
                        trip.id(),
                        charge,
                        day.harvestWattHours(),
                        fromGenerator(day),
                        takenOn(day));
            }
            charge = result.min(usable);
        }
    }

    private BigInteger broughtBy(SiteDay day) {
        return BigInteger.valueOf(day.harvestWattHours()).add(fromGenerator(day));
    }

    private BigInteger fromGenerator(SiteDay day) {
        return generated.getOrDefault(day.date(), BigInteger.ZERO);
    }

    private BigInteger takenOn(SiteDay day) {
        return facts.blocksOn(day.date()).stream().map(this::energyOf).reduce(BigInteger.ZERO, BigInteger::add);
    }

    /** Quarter-hours x Wh for an hour / 4, rounded up; a negative block gives nothing back. */
    private BigInteger energyOf(WorkBlock block) {
        long perHour = facts.stage(block.stage()).map(Stage::wattHoursPerHour).orElse(0L);
        BigInteger quartersOfWattHours =
                BigInteger.valueOf(perHour).multiply(BigInteger.valueOf(Math.max(0, block.quarters())));
        BigInteger[] whole = quartersOfWattHours.divideAndRemainder(BigInteger.valueOf(4));
        return whole[1].signum() == 0 ? whole[0] : whole[0].add(BigInteger.ONE);
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.POWER, sentence, parts);
    }
}
