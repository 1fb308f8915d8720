package org.firmset.plan.search;

import org.firmset.plan.Totals;

/** What a plan costs, in cents. */
final class Costs {
    private final Model model;
    private final Ledger ledger;

    Costs(Model model, Ledger ledger) {
        this.model = model;
        this.ledger = ledger;
    }

    Totals totals(Draft draft) {
        int trips = 0;
        int runs = 0;
        long tripCents = 0;
        long extraCents = 0;
        long deliveryCents = 0;
        for (int t = 0; t < model.tripCount(); t++) {
            if (ledger.tripIsMade(t)) {
                trips++;
                tripCents += model.trip(t).cents();
            }
        }
        Supply supply = ledger.supply;
        for (int source = supply.lotCount(); source < supply.sourceEnd(); source++) {
            if (supply.inUse(source)) {
                runs++;
                extraCents += supply.isExtraRun(source)
                        ? model.trip(supply.tripOf(source)).extraRunCents()
                        : 0;
                deliveryCents +=
                        supply.isDelivery(source) ? supply.offerOf(source).cents() + supply.smallOrderCents(source) : 0;
            }
        }
        return new Totals(trips, runs, tripCents, extraCents, deliveryCents, generatorCents(), materialCents(draft));
    }

    private long generatorCents() {
        long perKilowattHour = model.problem.site().generatorCentsPerKilowattHour();
        if (model.problem.site().generatorWattHoursPerDay() == 0) {
            return 0;
        }
        long wattHours = 0;
        for (long use : ledger.generatorUse()) {
            wattHours += use;
        }
        return Math.ceilDiv(wattHours * perKilowattHour, 1000);
    }

    private long materialCents(Draft draft) {
        long cents = 0;
        for (Placement placement : draft.placed()) {
            for (Reservation reservation : placement.reservations) {
                boolean bought = !ledger.supply.isLot(reservation.source());
                cents += bought
                        ? reservation.packs()
                                * model.material(reservation.material()).cents()
                        : 0;
            }
        }
        return cents;
    }
}
