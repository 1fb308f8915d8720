package org.firmset.plan.check;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Rule;
import org.firmset.plan.Trip;

/** Rule 4: the battery holds its floor at every hour of a trip with work that draws. */
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
        Charging charging = new Charging(facts.problem(), facts.schedule());
        facts.problem().trips().stream()
                .filter(charging::draws)
                .forEach(trip -> staysAboveFloor(trip, charging.on(trip)));
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

    private void staysAboveFloor(Trip trip, TripCharge charge) {
        charge.broken()
                .ifPresent(hour -> breach(
                        "The battery is %s Wh under its floor in the hour from %d:00 on %s of trip [%s]",
                        -TripCharge.Hour.wattHours(hour.left()), hour.hour(), hour.date(), trip.id()));
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.POWER, sentence, parts);
    }
}
