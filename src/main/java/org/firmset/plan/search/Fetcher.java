package org.firmset.plan.search;

/** Finds packs for a block, the nearest source first, so that nothing lies on site longer than it must. */
final class Fetcher {
    private final Model model;
    private final Ledger ledger;
    private final Supply supply;

    Fetcher(Model model, Ledger ledger) {
        this.model = model;
        this.ledger = ledger;
        this.supply = ledger.supply;
    }

    /** Reserves all the packs, noting them in the placement, or only some and answers false. */
    boolean reserve(Placement into, int material, int packs, int useDay, Genes genes) {
        Wanted wanted = new Wanted(into, material, packs, useDay);
        int trip = model.tripOfDay[useDay];
        for (int lot = 0; lot < supply.lotCount() && wanted.packs > 0; lot++) {
            take(wanted, lot, 0);
        }
        if (genes.guide() != null) {
            asGuided(wanted, genes.guide().loads());
        }
        fromRun(wanted, supply.arrivalRun(trip));
        for (int t = trip - 1; t >= 0 && wanted.packs > 0; t--) {
            if (ledger.tripIsMade(t)) {
                fromRun(wanted, supply.arrivalRun(t));
            }
        }
        switch (genes.fetching()) {
            case EXTRA_RUN_FIRST -> {
                fromExtraRuns(wanted, trip);
                fromDeliveries(wanted, genes);
                fromTripsAhead(wanted, genes);
            }
            case DELIVERY_FIRST -> {
                fromDeliveries(wanted, genes);
                fromExtraRuns(wanted, trip);
                fromTripsAhead(wanted, genes);
            }
            case AHEAD_FIRST -> {
                fromTripsAhead(wanted, genes);
                fromExtraRuns(wanted, trip);
                fromDeliveries(wanted, genes);
            }
        }
        for (int t = trip - 1; t >= 0 && wanted.packs > 0; t--) {
            if (ledger.tripIsMade(t)) {
                fromExtraRuns(wanted, t);
            }
        }
        return wanted.packs == 0;
    }

    /** As much from runs and deliveries as the guide counts on, the nearest first. */
    private void asGuided(Wanted wanted, Guide.Loads loads) {
        int group = loads.groupOf()[wanted.material];
        if (group == Guide.Loads.NO_GROUP) {
            return;
        }
        for (int t = model.tripOfDay[wanted.useDay]; t >= 0 && wanted.packs > 0; t--) {
            for (int offer = 0; offer < loads.delivered()[group].length; offer++) {
                for (int d = Math.min(wanted.useDay, model.lastDayOfTrip[t]); d >= model.firstDayOfTrip[t]; d--) {
                    int source = supply.delivery(offer, d);
                    long grams = loads.delivered()[group][offer][d] - brought(loads, group, source, source + 1);
                    take(wanted, source, 0, packs(wanted, grams));
                }
            }
            int first = supply.arrivalRun(t);
            int end = first + 1 + loads.extraRuns()[t];
            for (int run = first; run < end && loads.own()[group][t] > 0; run++) {
                for (int bay : supply.baysOf(run)) {
                    take(wanted, run, bay, packs(wanted, loads.own()[group][t] - brought(loads, group, first, end)));
                }
            }
        }
    }

    private long brought(Guide.Loads loads, int group, int from, int until) {
        long grams = 0;
        for (int m = 0; m < loads.groupOf().length; m++) {
            for (int source = from; source < until && loads.groupOf()[m] == group; source++) {
                grams += supply.packsFrom(source, m) * model.material(m).grams();
            }
        }
        return grams;
    }

    private int packs(Wanted wanted, long grams) {
        long each = Math.max(1, model.material(wanted.material).grams());
        return (int) Math.clamp(grams / each, 0, Integer.MAX_VALUE);
    }

    private void fromExtraRuns(Wanted wanted, int trip) {
        for (int run = supply.arrivalRun(trip) + 1; run < supply.runsEndOf(trip); run++) {
            fromRun(wanted, run);
        }
    }

    private void fromDeliveries(Wanted wanted, Genes genes) {
        int offers = model.problem.offers().size();
        for (int d = wanted.useDay; d >= 0 && wanted.packs > 0 && offers > 0; d--) {
            int t = model.tripOfDay[d];
            if (t == model.tripOfDay[wanted.useDay] || ledger.tripIsMade(t) || !genes.closedTrip()[t]) {
                for (int offer = 0; offer < offers; offer++) {
                    take(wanted, supply.delivery(offer, d), 0);
                }
            }
        }
    }

    private void fromTripsAhead(Wanted wanted, Genes genes) {
        for (int t = model.tripOfDay[wanted.useDay] - 1; t >= 0 && wanted.packs > 0; t--) {
            if (!genes.closedTrip()[t] && !ledger.tripIsMade(t)) {
                fromRun(wanted, supply.arrivalRun(t));
            }
        }
    }

    private void fromRun(Wanted wanted, int run) {
        for (int bay : supply.baysOf(run)) {
            take(wanted, run, bay);
        }
    }

    private void take(Wanted wanted, int source, int bay) {
        take(wanted, source, bay, wanted.packs);
    }

    private void take(Wanted wanted, int source, int bay, int most) {
        int asked = Math.min(most, wanted.packs);
        if (asked == 0) {
            return;
        }
        int packs = supply.available(source, bay, wanted.material, asked, wanted.useDay);
        if (packs > 0) {
            Reservation reservation = new Reservation(source, bay, wanted.material, packs, wanted.useDay);
            supply.add(reservation);
            wanted.into.reservations.add(reservation);
            wanted.packs -= packs;
        }
    }

    private static final class Wanted {
        final Placement into;
        final int material;
        final int useDay;
        int packs;

        Wanted(Placement into, int material, int packs, int useDay) {
            this.into = into;
            this.material = material;
            this.packs = packs;
            this.useDay = useDay;
        }
    }
}
