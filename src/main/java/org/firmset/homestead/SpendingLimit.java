package org.firmset.homestead;

import org.firmset.measure.Described;
import org.javamoney.moneta.Money;

@Described("The most that may be spent in a calendar month, on drives, packs, deliveries and fuel.")
public record SpendingLimit(
        @Described("What may be spent in one month.") Money aMonth,

        @Described("No plan may spend more; otherwise it is kept as far as it can be.")
        boolean firm) {}
