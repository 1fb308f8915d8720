package org.firmset.homestead;

import org.firmset.measure.Described;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("What it costs to buy a tool or to hire it: a price, a hire, or both to choose between.")
public record ToolCost(
        @Described("Price to buy it; left out when it is not to be bought.") @Nullable
        Money price,

        @Described("What it brings when it is sold again; left out for nothing.") @Nullable
        Money resale,

        @Described("Upkeep of one's own for each trip it is used on; left out for nothing.") @Nullable
        Money upkeep,

        @Described("Hire of a day; left out when it is not to be hired.") @Nullable
        Money hireADay,

        @Described("What each hire costs besides, such as fetching it; left out for nothing.") @Nullable
        Money fetching) {}
