package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Power;

@Described("What makes battery power into mains power for the tools.")
public record Inverter(
        @Described(value = "What it gives for as long as it likes.", least = "1 W", most = "100 kW")
        Power continuous,

        @Described(value = "What it gives for a moment while a motor starts.", least = "1 W", most = "300 kW")
        Power surge,

        @Described(value = "Percent that arrives of what it takes from the battery.", least = "1", most = "100")
        int efficiencyPercent) {}
