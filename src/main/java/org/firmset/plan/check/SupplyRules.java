package org.firmset.plan.check;

import static java.util.stream.Collectors.groupingBy;

import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;

/** Rule 6: materials are fetched when there are some, on site and good when used, and dry where they must be. */
final class SupplyRules {
    /** @param planned false for stock: what is on site already is no decision of a plan */
    private record Arrival(Material material, LocalDate date, long packs, boolean planned) {}

    private final Facts facts;
    private final Breaches breaches;
    private final Map<String, Pile> piles = new HashMap<>();
    private final List<Pile> dryPiles = new ArrayList<>();

    SupplyRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
        for (Material material : facts.problem().materials()) {
            Pile pile = new Pile(material);
            piles.put(material.id(), pile);
            if (material.dry()) {
                dryPiles.add(pile);
            }
        }
    }

    void check() {
        facts.schedule().runs().forEach(this::carriesOnlyWhatIsAvailable);
        Map<LocalDate, List<Arrival>> arrivals = arrivals().stream().collect(groupingBy(Arrival::date));
        Map<LocalDate, List<Use>> uses = uses().stream().collect(groupingBy(Use::date));
        TreeSet<LocalDate> dates = new TreeSet<>(arrivals.keySet());
        dates.addAll(uses.keySet());
        for (LocalDate date : dates) {
            List<Arrival> arrived = arrivals.getOrDefault(date, List.of());
            arrived.forEach(a -> pileOf(a.material().id()).arrive(date, a.packs()));
            uses.getOrDefault(date, List.of()).forEach(this::isOnSiteAndGood);
            if (arrived.stream().anyMatch(a -> a.planned() && a.material().dry())) {
                staysDry(date);
            }
        }
    }

    private Pile pileOf(String material) {
        Pile pile = piles.get(material);
        if (pile == null) {
            throw new IllegalStateException("material [" + material + "] is not in the problem");
        }
        return pile;
    }

    private void carriesOnlyWhatIsAvailable(Run run) {
        for (Cargo cargo : facts.cargo(run)) {
            Material material = cargo.material();
            if (run.broughtOn().isBefore(material.availableFrom())) {
                breach(
                        "The %s of trip [%s] carries %s packs of [%s] on %s, which can be had from %s",
                        RunRules.inWords(run.kind()),
                        run.trip(),
                        cargo.load().packs(),
                        material.name(),
                        run.broughtOn(),
                        material.availableFrom());
            }
        }
    }

    private List<Arrival> arrivals() {
        List<Arrival> arrivals = new ArrayList<>();
        for (StockLot lot : facts.problem().site().stock()) {
            if (lot.packs() > 0) {
                Material material = facts.material(lot.material()).orElseThrow();
                arrivals.add(new Arrival(material, lot.arrivedOn(), lot.packs(), false));
            }
        }
        for (Run run : facts.schedule().runs()) {
            for (Cargo cargo : facts.cargo(run)) {
                arrivals.add(new Arrival(
                        cargo.material(), run.broughtOn(), cargo.load().packs(), true));
            }
        }
        return arrivals;
    }

    private List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (Stage stage : facts.problem().stages()) {
            for (Need need : stage.needs()) {
                uses.addAll(Use.inStep(stage, need, facts.blocksOf(stage.id())));
            }
        }
        return uses;
    }

    private void isOnSiteAndGood(Use use) {
        Pile pile = pileOf(use.material());
        long taken = pile.use(use.date(), use.packs());
        if (taken < use.packs()) {
            breach(
                    "Stage [%s] uses %s packs of [%s] on %s but only %s good packs are on site; %s have gone off",
                    use.stage().name(),
                    use.packs(),
                    facts.material(use.material()).map(Material::name).orElse(use.material()),
                    use.date(),
                    taken,
                    pile.goneOff());
        }
    }

    /** Only a site day has somebody there to stow what arrived. */
    private void staysDry(LocalDate date) {
        long room = facts.problem().site().dryStorageMillilitres();
        BigInteger taken = dryPiles.stream().map(Pile::millilitres).reduce(BigInteger.ZERO, BigInteger::add);
        if (facts.siteDay(date).isPresent() && taken.compareTo(BigInteger.valueOf(room)) > 0) {
            breach("At the end of %s the dry packs on site take %s ml but dry storage has %s ml", date, taken, room);
        }
    }

    private void breach(String sentence, Object... parts) {
        breaches.add(Rule.SUPPLIES, sentence, parts);
    }
}
