package org.firmset.trade.haul;

import java.util.List;

/**
 * How many packs of each cargo lie on which of its spots, with what that costs. Moves are cheap: sums are kept, not made
 * anew. Not thread-safe.
 */
final class Arrangement {
    /** What one pack of a heavy hand's load costs for each zone it lies away from its best place. */
    private static final double HEAVY_GRAMS = 40_000;

    private static final double SPLIT = 0.4;
    private static final double ON_A_BORDER = 1;
    private static final double FRONT_LIGHT_PER_GRAM = 0.0005;

    /** 10 kg off the middle of the usual share cost about as much as a heavy pack one zone away from its best place. */
    private static final double TONGUE_OFF_PER_GRAM = 0.000_1;

    private final Balance balance;
    private final LimitKind[] kinds;
    private final double[] ratings;
    private final double frontLeast;
    private final boolean tongueCounts;
    private final double trailerEmpty;
    private final Floor[] floors;
    private final int[] floorOf;
    private final Spot[][] spots;
    private final double[][] wish;
    private final Packs[] packs;
    private final long[][] taken;
    private final double[] mass;
    private final double[] moment;
    private final int bed;
    private final int deck;
    private final int roof;
    private double wishes;
    private int used;

    final int[][] count;
    private double hard;
    private double soft;

    Arrangement(Outfit outfit, List<Cargo> cargo, boolean tongueCounts) {
        balance = new Balance(outfit);
        kinds = balance.kinds().toArray(LimitKind[]::new);
        ratings = balance.kinds().stream().mapToDouble(balance::rating).toArray();
        VehicleAxles axles = outfit.vehicle().axles();
        frontLeast = axles == null ? 0 : LoadSheet.LIGHT_FRONT * axles.frontEmptyGrams();
        this.tongueCounts = tongueCounts;
        HaulTrailer trailer = outfit.trailer();
        trailerEmpty = trailer == null ? 0 : trailer.emptyGrams();
        List<Bay> bays = outfit.bays();
        bed = 0;
        deck = trailer == null ? -1 : bays.indexOf(trailer.bay());
        RoofRack rack = outfit.vehicle().roof();
        roof = rack == null ? -1 : bays.indexOf(rack.bay());
        floors = bays.stream().map(b -> new Floor(outfit, b)).toArray(Floor[]::new);
        taken = new long[floors.length][];
        for (int f = 0; f < floors.length; f++) {
            taken[f] = new long[floors[f].zones];
        }
        mass = new double[floors.length];
        moment = new double[floors.length];
        packs = cargo.stream().map(Cargo::packs).toArray(Packs[]::new);
        floorOf =
                cargo.stream().mapToInt(c -> bays.indexOf(outfit.bay(c.bay()))).toArray();
        spots = new Spot[packs.length][];
        wish = new double[packs.length][];
        count = new int[packs.length][];
        for (int g = 0; g < packs.length; g++) {
            spots[g] = floors[floorOf[g]].spots(packs[g]).toArray(Spot[]::new);
            wish[g] = wishes(outfit, cargo, g);
            count[g] = new int[spots[g].length];
        }
    }

    /** What it costs to have one pack on each spot: far from the axle when heavy, far from the tailgate when needed first. */
    private double[] wishes(Outfit outfit, List<Cargo> cargo, int g) {
        Floor floor = floors[floorOf[g]];
        double zone = Math.max(1.0, (double) floor.length / floor.zones);
        double best = best(outfit, floor);
        double urgency = urgency(cargo, g);
        double[] result = new double[spots[g].length];
        int fewest = spots[g][0].zones();
        for (int s = 0; s < result.length; s++) {
            Spot spot = spots[g][s];
            double fromTailgate = (floor.length - spot.middle()) / zone;
            result[s] = urgency * fromTailgate
                    + packs[g].grams() / HEAVY_GRAMS * Math.abs(spot.middle() - best) / zone
                    + (spot.zones() > fewest ? ON_A_BORDER : 0);
        }
        return result;
    }

    /** Over the vehicle's rear axle; as far before the trailer's that its tongue is as usual; not known, then about there. */
    private double best(Outfit outfit, Floor floor) {
        VehicleAxles axles = outfit.vehicle().axles();
        HaulTrailer trailer = outfit.trailer();
        if (floor == floors[bed]) {
            double axle = axles == null
                    ? floor.length / 2.0
                    : axles.wheelbaseMillimetres() - (double) axles.bayFrontMillimetres();
            return Math.clamp(axle, 0, (double) floor.length);
        }
        TrailerDeck place = trailer == null ? null : trailer.deck();
        return place == null
                ? 0.45 * floor.length
                : Math.clamp((1 - Tongue.MIDDLE_SHARE) * place.axleMillimetres() - place.frontMillimetres(), 0, (double)
                        floor.length);
    }

    /** From 0.5 for what is needed first in its bay to -0.5 for what is needed last. */
    private double urgency(List<Cargo> cargo, int g) {
        List<Integer> orders = cargo.stream()
                .filter(c -> c.bay().equals(cargo.get(g).bay()))
                .map(c -> c.packs().neededFirst())
                .distinct()
                .sorted()
                .toList();
        return orders.size() < 2 ? 0 : 0.5 - (double) orders.indexOf(packs[g].neededFirst()) / (orders.size() - 1);
    }

    int cargoes() {
        return packs.length;
    }

    int spotsOf(int g) {
        return spots[g].length;
    }

    /** How many of its spots, the first ones, lie on as few zones as hold it. */
    int plainSpotsOf(int g) {
        int plain = 0;
        while (plain < spots[g].length && spots[g][plain].zones() == spots[g][0].zones()) {
            plain++;
        }
        return plain;
    }

    Spot spot(int g, int s) {
        return spots[g][s];
    }

    Packs packs(int g) {
        return packs[g];
    }

    boolean sameBay(int g, int h) {
        return floorOf[g] == floorOf[h];
    }

    /** Its spot whose middle lies nearest. */
    int nearest(int g, double middle) {
        int best = 0;
        for (int s = 1; s < spots[g].length; s++) {
            if (Math.abs(spots[g][s].middle() - middle) < Math.abs(spots[g][best].middle() - middle)) {
                best = s;
            }
        }
        return best;
    }

    /** Lays packs on a spot, or takes them off when {@code n} is negative. */
    void add(int g, int s, int n) {
        int before = count[g][s];
        count[g][s] = before + n;
        used += (before + n > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
        Spot spot = spots[g][s];
        int f = floorOf[g];
        for (int i = 0; i < spot.zones(); i++) {
            taken[f][spot.zone() + i] += n * Floor.part(packs[g].millilitres(), spot.zones(), i);
        }
        double grams = (double) n * packs[g].grams();
        mass[f] += grams;
        moment[f] += grams * spot.middle();
        wishes += n * wish[g][s];
    }

    void move(int g, int from, int to, int n) {
        add(g, from, -n);
        add(g, to, n);
    }

    /** Works out {@link #hard} and {@link #soft}. */
    void weigh() {
        Balance.Heap heap = new Balance.Heap(
                mass[bed],
                moment[bed],
                roof < 0 ? 0 : mass[roof],
                deck < 0 ? 0 : mass[deck],
                deck < 0 ? 0 : moment[deck]);
        double tongue = balance.tongue(heap);
        hard = 0;
        soft = wishes + SPLIT * used;
        for (int k = 0; k < kinds.length; k++) {
            double on = balance.on(kinds[k], heap, tongue);
            hard += Math.max(0, on - ratings[k]);
            if (kinds[k] == LimitKind.FRONT_AXLE) {
                soft += FRONT_LIGHT_PER_GRAM * Math.max(0, frontLeast - on);
            }
        }
        if (tongueCounts) {
            double trailer = trailerEmpty + heap.deck();
            hard += Math.max(0, Tongue.LEAST_SHARE * trailer - tongue);
            hard += Math.max(0, tongue - Tongue.MOST_SHARE * trailer);
            soft += TONGUE_OFF_PER_GRAM * Math.abs(tongue - Tongue.MIDDLE_SHARE * trailer);
        }
        for (int f = 0; f < floors.length; f++) {
            for (int z = 0; z < taken[f].length; z++) {
                hard += Math.max(0, taken[f][z] - floors[f].room(z));
            }
        }
    }

    /** Grams and millilitres over all limits. */
    double hard() {
        return hard;
    }

    /** How far from a careful driver's wishes. */
    double soft() {
        return soft;
    }

    int[][] copy() {
        int[][] copy = new int[count.length][];
        for (int g = 0; g < copy.length; g++) {
            copy[g] = count[g].clone();
        }
        return copy;
    }

    void become(int[][] wanted) {
        for (int g = 0; g < wanted.length; g++) {
            for (int s = 0; s < wanted[g].length; s++) {
                if (wanted[g][s] != count[g][s]) {
                    add(g, s, wanted[g][s] - count[g][s]);
                }
            }
        }
    }
}
