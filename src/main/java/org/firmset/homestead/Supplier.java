package org.firmset.homestead;

import java.util.List;
import org.firmset.measure.Described;
import org.jspecify.annotations.Nullable;

@Described("Somebody who sells materials.")
public record Supplier(
        @Described(value = "Key of the supplier.", key = true)
        String key,

        @Described("Name of the supplier.") String name,

        @Described(value = "Days between order and pick-up.", least = "0", most = "730")
        int leadDays,

        @Described("What it sells, and for how much.") List<Price> prices,

        @Described("On what terms it brings things to site; left out when it does not.") @Nullable
        DeliveryTerms delivery) {
    public Supplier {
        prices = List.copyOf(prices);
    }
}
