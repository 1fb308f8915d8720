package org.firmset.spend;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Need;
import org.firmset.homestead.Stage;
import org.firmset.homestead.takeoff.Needs;

/**
 * What the stages that are not finished still need to have bought: their needs, those of
 * takeoffs included, in the order of the stages, less what
 * lies on site, less what is on order. A stage that has begun counts with all its needs, as nobody knows what it has used.
 *
 * @param toBuy with prices
 * @param unpriced keys of materials that nobody has a price for, in order
 */
public record Outstanding(List<ToBuy> toBuy, List<String> unpriced) {
    /** How far back low and high prices are looked for. */
    public static final int DAYS_OF_PRICES = 365;

    public Outstanding {
        toBuy = List.copyOf(toBuy);
        unpriced = List.copyOf(unpriced);
    }

    /** @param receipts without faults; only orders count, what was paid for lies on site or is used */
    public static Outstanding of(Homestead homestead, List<Receipt> receipts, PriceBook prices, LocalDate on) {
        Map<String, Integer> there = there(homestead, receipts);
        List<ToBuy> toBuy = new ArrayList<>();
        TreeSet<String> unpriced = new TreeSet<>();
        for (Stage stage : Needs.reckoned(homestead).stages()) {
            if (stage.progress() == null || stage.progress().finishedOn() == null) {
                for (Need need : stage.needs()) {
                    int missing = missing(there, need);
                    Optional<PriceBook.Range> range = prices.range(need.material(), on, DAYS_OF_PRICES);
                    if (missing > 0 && range.isEmpty()) {
                        unpriced.add(need.material());
                    } else if (missing > 0) {
                        toBuy.add(new ToBuy(
                                stage.subproject(), stage.key(), need.material(), missing, range.orElseThrow()));
                    }
                }
            }
        }
        return new Outstanding(toBuy, List.copyOf(unpriced));
    }

    private static Map<String, Integer> there(Homestead homestead, List<Receipt> receipts) {
        Map<String, Integer> there = new HashMap<>();
        homestead.stock().forEach(l -> there.merge(l.material(), l.packs(), Integer::sum));
        receipts.stream()
                .filter(r -> r.state().isToCome())
                .flatMap(r -> r.lines().stream())
                .forEach(line -> {
                    if (line.isPacks() && line.material() != null) {
                        int packs =
                                line.quantity().setScale(0, RoundingMode.FLOOR).intValueExact();
                        there.merge(line.material(), packs, Integer::sum);
                    }
                });
        return there;
    }

    /** Takes what is there for the need, and tells what is not. */
    private static int missing(Map<String, Integer> there, Need need) {
        int have = there.getOrDefault(need.material(), 0);
        int taken = Math.min(have, need.packs());
        there.put(need.material(), have - taken);
        return need.packs() - taken;
    }
}
