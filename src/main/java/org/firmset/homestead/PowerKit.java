package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Energy;
import org.firmset.measure.Power;
import org.jspecify.annotations.Nullable;

@Described("Battery and panels on site. The battery is full when a trip begins.")
public record PowerKit(
        @Described(value = "What the battery holds when full.", least = "0 Wh", most = "1000 kWh")
        Energy capacity,

        @Described(value = "Percent of its charge that must stay in it.", least = "0", most = "99")
        int floorPercent,

        @Described(value = "Rated power of the panels.", least = "0 W", most = "100 kW")
        Power panels,

        @Described(value = "Percent of the rated energy that arrives after all losses.", least = "0", most = "100")
        int yieldPercent,

        @Described("A generator besides; left out for none.") @Nullable
        Generator generator) {}
