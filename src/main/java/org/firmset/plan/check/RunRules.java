package org.firmset.plan.check;

import static java.util.stream.Collectors.groupingBy;

import java.util.List;
import java.util.Map;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Trip;

/** Rule 5, which runs there are: one arrival and a few extra runs for a trip, all on its first date. */
final class RunRules {
    private final Facts facts;
    private final Breaches breaches;

    RunRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        List<Run> runs = facts.schedule().runs();
        runs.forEach(this::belongsToKnownTrip);
        runs.stream().filter(run -> run.kind() != RunKind.DELIVERY).forEach(this::comesWithPeople);
        Map<String, List<Run>> ofTrip = runs.stream().collect(groupingBy(Run::trip));
        for (Trip trip : facts.problem().trips()) {
            List<Run> ofThisTrip = ofTrip.getOrDefault(trip.id(), List.of());
            areNotTooMany(trip, RunKind.ARRIVAL, ofThisTrip);
            areNotTooMany(trip, RunKind.EXTRA, ofThisTrip);
            areOnFirstDate(trip, ofThisTrip);
        }
    }

    private void belongsToKnownTrip(Run run) {
        if (facts.trip(run.trip()).isEmpty()) {
            breach("The %s on %s is for trip [%s], which is not known", inWords(run.kind()), run.date(), run.trip());
        }
    }

    private void comesWithPeople(Run run) {
        namesNoOffer(run);
        if (!run.broughtOn().equals(run.date())) {
            breach(
                    "The %s of trip [%s] on %s comes to site on %s, but only a delivery comes on another date",
                    inWords(run.kind()), run.trip(), run.date(), run.broughtOn());
        }
    }

    private void namesNoOffer(Run run) {
        if (!run.offer().isEmpty()) {
            breach(
                    "The %s of trip [%s] on %s names offer [%s], but only a delivery has one",
                    inWords(run.kind()), run.trip(), run.date(), run.offer());
        }
    }

    private void areNotTooMany(Trip trip, RunKind kind, List<Run> ofTrip) {
        int most = kind == RunKind.ARRIVAL ? 1 : trip.mostExtraRuns();
        long count = ofTrip.stream().filter(run -> run.kind() == kind).count();
        if (count > most) {
            breach(
                    "Trip [%s] on %s has %s runs of kind [%s] but may have %s",
                    trip.id(), trip.firstDate(), count, inWords(kind), most);
        }
    }

    private void areOnFirstDate(Trip trip, List<Run> ofTrip) {
        for (Run run : ofTrip) {
            if (run.kind() != RunKind.DELIVERY && !run.date().equals(trip.firstDate())) {
                breach(
                        "The %s of trip [%s] is on %s but must be on its first date %s",
                        inWords(run.kind()), trip.id(), run.date(), trip.firstDate());
            }
        }
    }

    static String inWords(RunKind kind) {
        return switch (kind) {
            case ARRIVAL -> "arrival run";
            case EXTRA -> "extra run";
            case DELIVERY -> "delivery";
        };
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.RUNS, sentence, parts);
    }
}
