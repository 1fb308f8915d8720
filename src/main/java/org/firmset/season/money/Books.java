package org.firmset.season.money;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.measure.Cash;
import org.firmset.season.result.PlannedSeason;
import org.firmset.spend.Receipt;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * What money is reckoned from.
 *
 * @param season the plan of the homestead; null when there is none, then drives and deliveries ahead are not counted
 */
public record Books(Homestead homestead, @Nullable PlannedSeason season, Purchases purchases, LocalDate today) {
    /** @param receipts without faults */
    public Books(Homestead homestead, @Nullable PlannedSeason season, List<Receipt> receipts, LocalDate today) {
        this(homestead, season, Purchases.of(homestead.currency(), receipts), today);
    }

    String currency() {
        return homestead.currency();
    }

    Money cents(long cents) {
        return Cash.ofCents(cents, homestead.currency());
    }

    /** Who bears what a stage costs, by the key of the stage. */
    Map<String, Bearer> bearers() {
        Map<String, Bearer> bearers = new HashMap<>();
        homestead.stages().forEach(s -> bearers.put(s.key(), new Bearer(s.subproject(), s.key())));
        return bearers;
    }
}
