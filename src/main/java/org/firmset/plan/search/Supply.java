package org.firmset.plan.search;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Material;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.jspecify.annotations.Nullable;

/**
 * Where packs come from. Sources are numbered: first the lots on site, then for each trip its arrival run and its extra
 * runs, then each delivery offer on each site day. A source is in use as long as something is reserved from it.
 */
final class Supply {
    private final Model model;
    private final Ledger ledger;
    private final int lotCount;
    private final int[] firstRunOfTrip;
    private final int runEnd;
    private final int sourceEnd;
    private final int[] tripOfRun;
    /** Bays of a rig, those that spare the limits most first: a trailer takes little of the vehicle's payload. */
    private final int[][] bayOrder;

    private final int[] lotLeft;
    private final int[] packsOn;
    private final int[][] packsOf;
    private final long[][] volumeOn;
    private final long[][] limitUse;
    private final long[] truckMass;
    private final long[] truckCents;
    private final long[] dryAtEndOfDay;
    private final int[] dryArrivals;
    private final int[] sourcesOfTrip;

    Supply(Model model, Ledger ledger) {
        this.model = model;
        this.ledger = ledger;
        lotCount = model.problem.site().stock().size();
        lotLeft = new int[lotCount];
        firstRunOfTrip = new int[model.tripCount() + 1];
        bayOrder = new int[model.tripCount()][];
        int next = lotCount;
        for (int t = 0; t < model.tripCount(); t++) {
            firstRunOfTrip[t] = next;
            next += 1 + model.trip(t).mostExtraRuns();
            bayOrder[t] = bayOrder(model.trip(t).rig());
        }
        firstRunOfTrip[model.tripCount()] = next;
        runEnd = next;
        sourceEnd =
                Math.addExact(runEnd, Math.multiplyExact(model.problem.offers().size(), model.dayCount()));
        tripOfRun = new int[runEnd];
        for (int t = 0; t < model.tripCount(); t++) {
            Arrays.fill(tripOfRun, firstRunOfTrip[t], firstRunOfTrip[t + 1], t);
        }
        packsOn = new int[sourceEnd];
        packsOf = new int[model.problem.materials().size()][sourceEnd];
        volumeOn = new long[runEnd][];
        limitUse = new long[runEnd][];
        for (int r = lotCount; r < runEnd; r++) {
            Rig rig = rigOf(r);
            volumeOn[r] = new long[rig.bays().size()];
            limitUse[r] = new long[rig.limits().size()];
        }
        truckMass = new long[sourceEnd - runEnd];
        truckCents = new long[sourceEnd - runEnd];
        dryAtEndOfDay = new long[model.dayCount()];
        dryArrivals = new int[model.dayCount()];
        sourcesOfTrip = new int[model.tripCount()];
    }

    private static int[] bayOrder(Rig rig) {
        return IntStream.range(0, rig.bays().size())
                .boxed()
                .sorted(java.util.Comparator.comparingInt(b -> sharedUse(rig, b)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Only limits that bays share count: what one bay takes of those, the others lack. */
    private static int sharedUse(Rig rig, int bay) {
        String id = rig.bays().get(bay).id();
        return rig.limits().stream()
                .filter(l -> l.sharePermille().size() > 1)
                .mapToInt(l -> l.shareOf(id))
                .sum();
    }

    void clear() {
        for (int l = 0; l < lotCount; l++) {
            lotLeft[l] = model.lot(l).packs();
        }
        Arrays.fill(packsOn, 0);
        for (int[] packs : packsOf) {
            Arrays.fill(packs, 0);
        }
        for (int r = lotCount; r < runEnd; r++) {
            Arrays.fill(volumeOn[r], 0);
            Arrays.fill(limitUse[r], 0);
        }
        Arrays.fill(truckMass, 0);
        Arrays.fill(truckCents, 0);
        Arrays.fill(dryArrivals, 0);
        Arrays.fill(sourcesOfTrip, 0);
        Arrays.fill(dryAtEndOfDay, dryOfLots());
    }

    private long dryOfLots() {
        long sum = 0;
        for (int l = 0; l < lotCount; l++) {
            Material material = materialOfLot(l);
            sum += material.dry() ? material.millilitres() * lotLeft[l] : 0;
        }
        return sum;
    }

    private Material materialOfLot(int lot) {
        return model.material(model.materialIndex.of(model.lot(lot).material()));
    }

    int lotCount() {
        return lotCount;
    }

    int arrivalRun(int trip) {
        return firstRunOfTrip[trip];
    }

    int runsEndOf(int trip) {
        return firstRunOfTrip[trip + 1];
    }

    int delivery(int offer, int day) {
        return runEnd + offer * model.dayCount() + day;
    }

    int sourceEnd() {
        return sourceEnd;
    }

    boolean isLot(int source) {
        return source < lotCount;
    }

    boolean isDelivery(int source) {
        return source >= runEnd;
    }

    boolean isExtraRun(int source) {
        return !isLot(source) && !isDelivery(source) && source != firstRunOfTrip[tripOfRun[source]];
    }

    DeliveryOffer offerOf(int source) {
        return model.problem.offers().get((source - runEnd) / model.dayCount());
    }

    int dayOf(int source) {
        return isDelivery(source) ? (source - runEnd) % model.dayCount() : model.firstDayOfTrip[tripOfRun[source]];
    }

    int tripOf(int source) {
        return isDelivery(source) ? model.tripOfDay[dayOf(source)] : tripOfRun[source];
    }

    private Rig rigOf(int run) {
        return model.trip(tripOfRun[run]).rig();
    }

    boolean hasRun(int trip) {
        return sourcesOfTrip[trip] > 0;
    }

    boolean inUse(int source) {
        return packsOn[source] > 0;
    }

    /** How many packs of a material a run or delivery brings. */
    int packsFrom(int source, int m) {
        return packsOf[m][source];
    }

    int[] baysOf(int run) {
        return bayOrder[tripOfRun[run]];
    }

    /** How many packs a source can still give for use on a day, all limits kept; not over {@code wanted}. */
    int available(int source, int bay, int m, int wanted, int useDay) {
        if (isLot(source)) {
            return fromLot(source, m, wanted, useDay);
        }
        int day = dayOf(source);
        Material material = model.material(m);
        if (day > useDay || (isDelivery(source) && brought(source) == null)) {
            return 0;
        }
        if (!material.goodOn(model.days.get(useDay).date(), arrival(source))) {
            return 0;
        }
        int packs = Math.min(wanted, carries(source, bay, m));
        if (packs > 0 && ledger.purse().isLimited()) {
            packs = paid(source, m, packs);
        }
        return packs > 0 && material.dry() ? Math.min(packs, underRoof(material, day, useDay)) : packs;
    }

    /** How many of some packs the month can still pay for, and for the run that brings them. */
    private int paid(int source, int m, int packs) {
        long left = ledger.purse().left(dayOf(source)) - (inUse(source) ? 0 : startCents(source));
        long each = model.material(m).cents();
        if (!isDelivery(source) || offerOf(source).smallOrderCents() == 0) {
            return Math.min(packs, whole(left, each));
        }
        // more packs may cost less, when with them the order is no small one any more
        long open = Math.min(left, Long.MAX_VALUE / 2) + smallOrderCents(source);
        long goods = truckCents[source - runEnd];
        int most = Math.min(packs, whole(open, each));
        long fee = offerOf(source).smallOrderCents(goods + most * each);
        return fee == 0 ? most : Math.min(packs, whole(open - fee, each));
    }

    /** What a delivery takes because its goods are worth so little; 0 when none comes. */
    long smallOrderCents(int source) {
        return isDelivery(source) && inUse(source) ? offerOf(source).smallOrderCents(truckCents[source - runEnd]) : 0;
    }

    /** What a run or delivery costs before anything is on it, the trip to meet it included. */
    private long startCents(int source) {
        long trip = ledger.tripIsMade(tripOf(source))
                ? 0
                : model.trip(tripOf(source)).cents();
        return trip + runCents(source);
    }

    private long runCents(int source) {
        return isDelivery(source)
                ? offerOf(source).cents()
                : isExtraRun(source) ? model.trip(tripOf(source)).extraRunCents() : 0;
    }

    /** How many packs still go onto a run or a delivery, whatever room there is for them on site. */
    int carries(int source, int bay, int m) {
        return isDelivery(source) ? onTruck(source, m) : onRun(source, bay, m);
    }

    private int fromLot(int lot, int m, int wanted, int useDay) {
        LocalDate use = model.days.get(useDay).date();
        LocalDate arrived = model.lot(lot).arrivedOn();
        boolean fits = model.materialIndex.of(model.lot(lot).material()) == m
                && !use.isBefore(arrived)
                && model.material(m).goodOn(use, arrived);
        return fits ? Math.min(wanted, lotLeft[lot]) : 0;
    }

    private int onTruck(int source, int m) {
        DeliveryOffer offer = offerOf(source);
        LocalDate brought = brought(source);
        boolean comes = brought != null && model.brings(offer, m, brought, dayOf(source));
        return comes
                ? whole(
                        offer.grams() - truckMass[source - runEnd],
                        model.material(m).grams())
                : 0;
    }

    private @Nullable LocalDate brought(int source) {
        return model.brought[(source - runEnd) / model.dayCount()][dayOf(source)];
    }

    private int onRun(int run, int bay, int m) {
        int trip = tripOfRun[run];
        int first = model.firstDayOfTrip[trip];
        boolean mustStart = isExtraRun(run) && !inUse(run);
        if (model.availableEpoch[m] > model.dayEpoch[first]
                || (mustStart && ledger.quartersLeft(first) < model.trip(trip).extraRunQuarters())) {
            return 0;
        }
        Rig rig = rigOf(run);
        Bay place = rig.bays().get(bay);
        Material material = model.material(m);
        if (material.longestMillimetres() > place.longestMillimetres()) {
            return 0;
        }
        int packs = whole(place.millilitres() - volumeOn[run][bay], material.millilitres());
        List<MassLimit> limits = rig.limits();
        for (int l = 0; l < limits.size() && packs > 0; l++) {
            long each = product(material.grams(), limits.get(l).shareOf(place.id()));
            packs = Math.min(packs, whole(product(limits.get(l).grams(), 1000) - limitUse[run][l], each));
        }
        return Math.max(0, packs);
    }

    /** At most the greatest number there is: only of a problem that is refused can it be more. */
    private static long product(long one, long other) {
        return Math.multiplyHigh(one, other) == 0 && one * other >= 0
                ? one * other
                : other < 0 ? one * other : Long.MAX_VALUE;
    }

    private static int whole(long room, long each) {
        if (room < 0) {
            return 0;
        }
        return each == 0 ? Integer.MAX_VALUE : (int) Math.min(Integer.MAX_VALUE, room / each);
    }

    /** Dry packs that may arrive on {@code day} and lie there until {@code useDay}. */
    private int underRoof(Material material, int day, int useDay) {
        long limit = model.problem.site().dryStorageMillilitres();
        if (dryAtEndOfDay[day] > limit) {
            return 0;
        }
        long fullest = Long.MIN_VALUE;
        for (int d = day; d < useDay; d++) {
            if (d == day || dryArrivals[d] > 0) {
                fullest = Math.max(fullest, dryAtEndOfDay[d]);
            }
        }
        return fullest == Long.MIN_VALUE ? Integer.MAX_VALUE : whole(limit - fullest, material.millilitres());
    }

    /** Whether packs are still good when they are used on a later day. */
    boolean isGoodUntil(Reservation reservation, int useDay) {
        return model.material(reservation.material())
                .goodOn(model.days.get(useDay).date(), arrival(reservation.source()));
    }

    /** The date from which the packs of a source age. Of a delivery only where it can come. */
    LocalDate arrival(int source) {
        if (isLot(source)) {
            return model.lot(source).arrivedOn();
        }
        return isDelivery(source)
                ? Objects.requireNonNull(brought(source))
                : model.days.get(dayOf(source)).date();
    }

    /** Whether everything dry fits under the roof on every day on which something dry arrives. */
    boolean roofHolds() {
        long limit = model.problem.site().dryStorageMillilitres();
        return IntStream.range(0, dryArrivals.length).allMatch(d -> dryArrivals[d] == 0 || dryAtEndOfDay[d] <= limit);
    }

    void add(Reservation reservation) {
        book(reservation, 1);
    }

    void remove(Reservation reservation) {
        book(reservation, -1);
    }

    private void book(Reservation reservation, int sign) {
        int source = reservation.source();
        Material material = model.material(reservation.material());
        int packs = sign * reservation.packs();
        long dryVolume = material.dry() ? material.millilitres() * packs : 0;
        if (isLot(source)) {
            lotLeft[source] -= packs;
            addDry(reservation.useDay(), model.dayCount(), -dryVolume);
            return;
        }
        boolean was = inUse(source);
        long smallOrder = smallOrderCents(source);
        ledger.purse().spend(dayOf(source), packs * material.cents());
        packsOf[reservation.material()][source] += packs;
        packsOn[source] += packs;
        if (was != inUse(source)) {
            start(source, sign);
        }
        if (isDelivery(source)) {
            truckMass[source - runEnd] += material.grams() * packs;
            truckCents[source - runEnd] += material.cents() * packs;
            ledger.purse().spend(dayOf(source), smallOrderCents(source) - smallOrder);
        } else {
            bookRun(source, reservation.bay(), material, packs);
        }
        if (material.dry()) {
            dryArrivals[dayOf(source)] += packs;
            addDry(dayOf(source), reservation.useDay(), dryVolume);
        }
    }

    private void bookRun(int run, int bay, Material material, int packs) {
        Rig rig = rigOf(run);
        volumeOn[run][bay] += material.millilitres() * packs;
        for (int l = 0; l < limitUse[run].length; l++) {
            limitUse[run][l] += material.grams()
                    * packs
                    * rig.limits().get(l).shareOf(rig.bays().get(bay).id());
        }
    }

    private void addDry(int fromDay, int untilDay, long volume) {
        if (volume != 0) {
            for (int d = fromDay; d < untilDay; d++) {
                dryAtEndOfDay[d] += volume;
            }
        }
    }

    private void start(int source, int sign) {
        int trip = tripOf(source);
        boolean made = ledger.tripIsMade(trip);
        sourcesOfTrip[trip] += sign;
        if (made != ledger.tripIsMade(trip)) {
            ledger.payTrip(trip, sign);
        }
        ledger.purse().spend(dayOf(source), sign * runCents(source));
        if (isExtraRun(source)) {
            ledger.takeQuarters(
                    model.firstDayOfTrip[trip], sign * model.trip(trip).extraRunQuarters());
        }
    }
}
