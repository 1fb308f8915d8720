package org.firmset.season.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.firmset.plan.Material;

/** One material on site, from what comes and what is used: the oldest packs are used first, what is over its shelf life goes off. */
final class SiteStock {
    private final Material material;
    private final Map<LocalDate, Integer> arrivals = new TreeMap<>();
    private final Map<LocalDate, Integer> uses = new TreeMap<>();

    SiteStock(Material material) {
        this.material = material;
    }

    void arrive(LocalDate date, int packs) {
        if (packs > 0) {
            arrivals.merge(date, packs, Integer::sum);
        }
    }

    void use(LocalDate date, int packs) {
        uses.merge(date, packs, Integer::sum);
    }

    /** @param until what goes off later is not told any more */
    SeasonSupplies.StockStory story(String id, LocalDate until) {
        TreeSet<LocalDate> dates = new TreeSet<>(arrivals.keySet());
        dates.addAll(uses.keySet());
        if (material.shelfLifeDays() != Material.NEVER_GOES_OFF) {
            arrivals.keySet().forEach(date -> dates.add(date.plusDays(material.shelfLifeDays() + 1L)));
        }
        dates.tailSet(until, false).clear();
        Pile pile = new Pile(material);
        List<SeasonSupplies.StockDay> days = new ArrayList<>();
        int goneOff = 0;
        for (LocalDate date : dates) {
            int off = pile.takeGoneOff(date);
            int arrived = arrivals.getOrDefault(date, 0);
            pile.arrive(date, arrived, false);
            int used = pile.use(date, uses.getOrDefault(date, 0)).packs();
            goneOff += off;
            if (arrived + used + off > 0) {
                days.add(new SeasonSupplies.StockDay(date, arrived, used, off, pile.good(date)));
            }
        }
        return new SeasonSupplies.StockStory(id, days, pile.good(until), goneOff);
    }
}
