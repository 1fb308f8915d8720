package org.firmset.homestead;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;

@Described("How budgets are reckoned, and what is to be paid besides packs, drives and deliveries.")
public record Budgeting(
        @Described(value = "Tax on packs that are still to be bought, in percent.", least = "0", most = "100")
        BigDecimal taxPercent,

        @Described(value = "Reserve for what nobody foresees, in percent of the budget.", least = "0", most = "100")
        BigDecimal reservePercent,

        @Described(
                value = "What suppliers want paid down on goods that are ordered ahead, in percent.",
                least = "0",
                most = "100")
        BigDecimal paidDownPercent,

        @Described("How the cost of a trip is shared over the stages.")
        TripSharing tripsShared,

        @Described("Permits, tests, hired machines and the like.")
        List<BudgetItem> items) {
    public Budgeting {
        taxPercent = Measured.normal(taxPercent);
        reservePercent = Measured.normal(reservePercent);
        paidDownPercent = Measured.normal(paidDownPercent);
        items = List.copyOf(items);
    }

    /** What holds where nothing is written: no tax, no reserve, nothing paid down, trips shared by hours. */
    public static final Budgeting PLAIN =
            new Budgeting(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, TripSharing.BY_HOURS, List.of());
}
