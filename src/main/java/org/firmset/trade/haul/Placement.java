package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A load with a place for every pack: what holds every limit with real positions, then heavy near the axles and low, and
 * what is needed first near the tailgate and on top. Get one from {@link #of}; the same load always gives the same one.
 * Found by trying all placements where there are few and by local search where there are many, then put on the
 * {@link LoadSheet}; that a bigger load has none is the word of that search, not a proof. Thread-safe.
 *
 * @param zones of every bay, from the front
 * @param across what lies across several zones of its bay
 * @param sheet every limit with what is on it
 * @param excesses what does not hold; of all placements tried the one that is over by the least
 * @param restraints what holds each cargo
 * @param cautions always to be shown with it
 */
public record Placement(
        List<Zone> zones,
        List<Stowed> across,
        LoadSheet sheet,
        List<Excess> excesses,
        List<Restraint> restraints,
        List<String> cautions) {
    /** About 51 lb, the research limit of one person's lift; heavier packs are not put on lighter ones. */
    private static final long HEAVY_GRAMS = 23_000;

    /** What stands needs the floor; packs of a heavy hand's load lie under lighter ones; then what is needed last. */
    private static final Comparator<Stowed> LOWEST_FIRST = Comparator.<Stowed, Boolean>comparing(
                    s -> !s.cargo().packs().upright())
            .thenComparing(s -> s.cargo().packs().grams() < HEAVY_GRAMS)
            .thenComparingInt(s -> -s.cargo().packs().neededFirst())
            .thenComparingLong(s -> -s.cargo().packs().grams());

    public Placement {
        zones = List.copyOf(zones);
        across = List.copyOf(across);
        excesses = List.copyOf(excesses);
        restraints = List.copyOf(restraints);
        cautions = List.copyOf(cautions);
    }

    /**
     * Places a load.
     *
     * @param cargo each pack in the bay it was given
     * @throws IllegalArgumentException when the outfit has no such bay
     */
    public static Placement of(Outfit outfit, List<Cargo> cargo) {
        cargo.forEach(c -> outfit.bay(c.bay()));
        List<Stowed> stowed = new Stowing(outfit, cargo).search();
        LoadSheet sheet = LoadSheet.of(
                outfit,
                stowed.stream()
                        .map(s -> new Placed(s.cargo().bay(), s.grams(), s.middle()))
                        .toList());
        List<Zone> zones = outfit.bays().stream()
                .flatMap(b -> zones(new Floor(outfit, b), stowed).stream())
                .toList();
        return new Placement(
                zones,
                stowed.stream()
                        .filter(s -> !isInOneZone(
                                s, new Floor(outfit, outfit.bay(s.cargo().bay()))))
                        .toList(),
                sheet,
                Excesses.of(outfit, cargo, sheet, zones),
                Restraints.of(stowed),
                Restraints.CAUTIONS);
    }

    /** Whether every limit holds. */
    public boolean holds() {
        return excesses.isEmpty();
    }

    /** Every pack with its place. */
    public List<Stowed> stowed() {
        List<Stowed> all = new ArrayList<>(across);
        zones.forEach(z -> all.addAll(z.packs()));
        return all;
    }

    private static boolean isInOneZone(Stowed stowed, Floor floor) {
        for (int zone = 0; zone < floor.zones; zone++) {
            if (floor.from(zone) == stowed.from() && floor.from(zone + 1) == stowed.from() + stowed.length()) {
                return stowed.overFront() + stowed.overRear() == 0;
            }
        }
        return false;
    }

    private static List<Zone> zones(Floor floor, List<Stowed> all) {
        List<Zone> zones = new ArrayList<>();
        List<Stowed> inBay =
                all.stream().filter(s -> s.cargo().bay().equals(floor.bay.id())).toList();
        for (int zone = 0; zone < floor.zones; zone++) {
            long from = floor.from(zone);
            long to = floor.from(zone + 1);
            long grams = 0;
            long millilitres = 0;
            for (Stowed stowed : inBay) {
                if (stowed.from() <= from && stowed.from() + stowed.length() >= to) {
                    int count = covered(floor, stowed);
                    int index = zone - first(floor, stowed);
                    grams += stowed.packs() * Floor.part(stowed.cargo().packs().grams(), count, index);
                    millilitres +=
                            stowed.packs() * Floor.part(stowed.cargo().packs().millilitres(), count, index);
                }
            }
            int here = zone;
            List<Stowed> alone = inBay.stream()
                    .filter(s -> isInOneZone(s, floor) && first(floor, s) == here)
                    .sorted(LOWEST_FIRST)
                    .toList();
            zones.add(new Zone(floor.bay.id(), zone + 1, from, to - from, grams, millilitres, floor.room(zone), alone));
        }
        return zones;
    }

    private static int first(Floor floor, Stowed stowed) {
        int zone = 0;
        while (zone + 1 < floor.zones && floor.from(zone) < stowed.from()) {
            zone++;
        }
        return zone;
    }

    private static int covered(Floor floor, Stowed stowed) {
        int count = 1;
        int first = first(floor, stowed);
        while (first + count < floor.zones && floor.from(first + count) < stowed.from() + stowed.length()) {
            count++;
        }
        return count;
    }
}
