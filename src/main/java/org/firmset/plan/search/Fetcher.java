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
        if (wanted.packs == 0) {
            return;
        }
        int packs = supply.available(source, bay, wanted.material, wanted.packs, wanted.useDay);
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
