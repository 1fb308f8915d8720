package org.firmset.plan.check;

import static java.util.stream.Collectors.groupingBy;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.plan.Load;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.RunKind;
import org.firmset.plan.Trip;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/** Rule 5, loads: whole packs in bays that are long and large enough, under every limit on mass. */
final class LoadRules {
    private static final BigInteger PERMILLE = BigInteger.valueOf(1000);

    private final Facts facts;
    private final Breaches breaches;

    LoadRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        for (Run run : facts.schedule().runs()) {
            run.loads().forEach(load -> isOfKnownMaterial(run, load));
            run.loads().forEach(load -> isAtLeastOnePack(run, load));
            if (run.kind() == RunKind.DELIVERY) {
                run.loads().forEach(load -> isOnTruck(run, load));
            } else {
                facts.trip(run.trip()).map(Trip::rig).ifPresent(rig -> fits(run, rig));
            }
        }
    }

    private void isOfKnownMaterial(Run run, Load load) {
        if (facts.material(load.material()).isEmpty()) {
            breach(run, "carries material [%s], which is not known", load.material());
        }
    }

    private void isAtLeastOnePack(Run run, Load load) {
        if (load.packs() < 1) {
            breach(run, "carries %s packs of [%s]; a load is at least one", load.packs(), load.material());
        }
    }

    private void isOnTruck(Run run, Load load) {
        if (!load.bay().equals(Load.TRUCK)) {
            breach(
                    run,
                    "has %s packs of [%s] in bay [%s], but a delivery has only [%s]",
                    load.packs(),
                    load.material(),
                    load.bay(),
                    Load.TRUCK);
        }
    }

    private void fits(Run run, Rig rig) {
        run.loads().forEach(load -> isInKnownBay(run, rig, load));
        Map<String, List<Cargo>> byBay = facts.cargo(run).stream()
                .collect(groupingBy(cargo -> cargo.load().bay()));
        for (Bay bay : rig.bays()) {
            List<Cargo> inBay = byBay.getOrDefault(bay.id(), List.of());
            inBay.forEach(cargo -> isShortEnough(run, bay, cargo));
            hasTheRoom(run, bay, inBay);
        }
        rig.limits().forEach(limit -> holds(run, limit, byBay));
    }

    private void isInKnownBay(Run run, Rig rig, Load load) {
        Optional<Bay> bay =
                rig.bays().stream().filter(b -> b.id().equals(load.bay())).findAny();
        if (bay.isEmpty()) {
            breach(
                    run,
                    "has %s packs of [%s] in bay [%s], which rig [%s] does not have",
                    load.packs(),
                    load.material(),
                    load.bay(),
                    rig.name());
        }
    }

    private void isShortEnough(Run run, Bay bay, Cargo cargo) {
        long longest = cargo.material().longestMillimetres();
        if (longest > bay.longestMillimetres()) {
            breach(
                    run,
                    "has [%s], %s mm long, in bay [%s], which takes %s mm",
                    cargo.material().name(),
                    longest,
                    bay.name(),
                    bay.longestMillimetres());
        }
    }

    private void hasTheRoom(Run run, Bay bay, List<Cargo> inBay) {
        BigInteger millilitres = Cargo.sum(inBay, Cargo::millilitres);
        if (!inBay.isEmpty() && millilitres.compareTo(BigInteger.valueOf(bay.millilitres())) > 0) {
            breach(run, "has %s ml in bay [%s], which takes %s ml", millilitres, bay.name(), bay.millilitres());
        }
    }

    /** Counts thousandths of grams, so that no part of one is lost; what is told is rounded up. */
    private void holds(Run run, MassLimit limit, Map<String, List<Cargo>> byBay) {
        BigInteger milligrams = BigInteger.ZERO;
        for (Map.Entry<String, List<Cargo>> bay : byBay.entrySet()) {
            BigInteger share = BigInteger.valueOf(limit.shareOf(bay.getKey()));
            milligrams = milligrams.add(Cargo.sum(bay.getValue(), Cargo::grams).multiply(share));
        }
        if (milligrams.compareTo(BigInteger.valueOf(limit.grams()).multiply(PERMILLE)) > 0) {
            BigInteger grams = milligrams.add(PERMILLE).subtract(BigInteger.ONE).divide(PERMILLE);
            breach(run, "puts %s g on [%s], which takes %s g", grams, limit.name(), limit.grams());
        }
    }

    private void breach(Run run, String rest, Object... parts) {
        String who = "The %s of trip [%s] on %s ".formatted(RunRules.inWords(run.kind()), run.trip(), run.date());
        breaches.add(Rule.RUNS, "%s%s", who, rest.formatted(parts));
    }
}
