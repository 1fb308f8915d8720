package org.firmset.season.load;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.StockLot;

/** What is on site of every material of a problem. */
final class Piles {
    private final Map<String, Pile> piles = new HashMap<>();

    /** With what is there at the status date. */
    Piles(PlanningProblem problem) {
        problem.materials().forEach(m -> piles.put(m.id(), new Pile(m)));
        problem.site().stock().stream()
                .sorted(Comparator.comparing(StockLot::arrivedOn))
                .forEach(lot -> of(lot.material()).arrive(lot.arrivedOn(), lot.packs(), false));
    }

    Pile of(String material) {
        Pile pile = piles.get(material);
        if (pile == null) {
            throw new IllegalArgumentException("material [" + material + "] is not in the problem");
        }
        return pile;
    }

    int good(String material, LocalDate date) {
        return of(material).good(date);
    }
}
