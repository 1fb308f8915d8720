package org.firmset.season.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Material;
import org.firmset.homestead.StockLot;
import org.firmset.season.load.SeasonSupplies;
import org.firmset.season.load.SuppliesWriter;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Allocation;
import org.firmset.spend.Lots;
import org.javamoney.moneta.Money;

/**
 * Packs of one material that lie on site, and what is left of them when the plan is done. Worth is what was paid for them,
 * the oldest used first.
 *
 * @param onSite packs there today
 * @param worth of those that a receipt is there for
 * @param withoutReceipt packs among them that no receipt tells the cost of
 * @param left good packs after the last work of the plan
 * @param leftWorth what they carry of their cost
 * @param goneOff packs that go off before they are used
 * @param lost what those cost
 */
public record LeftOver(
        String material,
        int onSite,
        Money worth,
        int withoutReceipt,
        int left,
        Money leftWorth,
        int goneOff,
        Money lost) {

    /** One for each material that is there, stays over or goes off, as the homestead lists them. */
    static List<LeftOver> of(Books books, List<Coming> coming) {
        Map<String, List<Lots.Lot>> bought = bought(books);
        Map<String, SeasonSupplies.StockStory> stories = stories(books);
        List<LeftOver> all = new ArrayList<>();
        for (Material material : books.homestead().materials()) {
            String key = material.key();
            int onSite = books.homestead().stock().stream()
                    .filter(l -> l.material().equals(key))
                    .mapToInt(StockLot::packs)
                    .sum();
            Lots lots = new Lots(books.currency(), bought.getOrDefault(key, List.of()));
            Lots there = lots.use(Math.max(0, lots.packs() - onSite)).left();
            SeasonSupplies.StockStory story = stories.get(key);
            int left = story == null ? 0 : story.left();
            int off = story == null ? 0 : story.goneOff();
            if (onSite + left + off > 0) {
                Lots later = withComing(there, coming, key);
                all.add(new LeftOver(
                        key,
                        onSite,
                        there.value(),
                        onSite - there.packs(),
                        left,
                        later.use(Math.max(0, later.packs() - left)).left().value(),
                        off,
                        there.use(off).cost()));
            }
        }
        return all;
    }

    private static Lots withComing(Lots there, List<Coming> coming, String material) {
        Lots lots = there;
        for (Coming next : coming) {
            if (next.purpose() == Purpose.PACKS && next.what().equals(material)) {
                lots = lots.plus(new Lots.Lot(next.on(), next.quantity().intValueExact(), next.expected()));
            }
        }
        return lots;
    }

    private static Map<String, SeasonSupplies.StockStory> stories(Books books) {
        Map<String, SeasonSupplies.StockStory> stories = new LinkedHashMap<>();
        PlannedSeason season = books.season();
        if (season != null) {
            SuppliesWriter.write(books.homestead(), season).stock().forEach(s -> stories.put(s.material(), s));
        }
        return stories;
    }

    /** Whole packs by material; what went back is taken out of the lots that were bought last before. */
    private static Map<String, List<Lots.Lot>> bought(Books books) {
        Map<String, List<Lots.Lot>> lots = new LinkedHashMap<>();
        for (Purchases.Packs some : books.purchases().packs()) {
            List<Lots.Lot> its = lots.computeIfAbsent(some.material(), m -> new ArrayList<>());
            change(its, some.date(), some.packs(), some.cost());
        }
        return lots;
    }

    private static void change(List<Lots.Lot> lots, LocalDate date, int packs, Money cost) {
        if (packs > 0) {
            lots.add(new Lots.Lot(date, packs, cost));
        } else {
            giveBack(lots, -packs, cost);
        }
    }

    /** The refund goes over the packs alike; what is left of a lot carries no less than nothing. */
    private static void giveBack(List<Lots.Lot> lots, int packs, Money refund) {
        int back = packs;
        Money open = refund;
        while (back > 0 && !lots.isEmpty()) {
            Lots.Lot last = lots.removeLast();
            int taken = Math.min(back, last.packs());
            List<Money> parts =
                    Allocation.split(open, List.of(BigDecimal.valueOf(taken), BigDecimal.valueOf(back - taken)));
            if (taken < last.packs()) {
                Money left = last.cost().add(parts.getFirst());
                lots.add(new Lots.Lot(
                        last.since(), last.packs() - taken, left.isNegative() ? left.subtract(left) : left));
            }
            back -= taken;
            open = parts.getLast();
        }
    }
}
