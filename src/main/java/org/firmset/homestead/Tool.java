package org.firmset.homestead;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Measured;
import org.firmset.measure.Power;
import org.jspecify.annotations.Nullable;

@Described("A tool that stages use.")
public record Tool(
        @Described(value = "Key of the tool.", key = true) String key,
        @Described("Name of the tool.") String name,

        @Described(value = "How many of it there are.", least = "1", most = "1000")
        int count,

        @Described(
                value = "What it draws while it runs; left out when it needs no power.",
                least = "0 W",
                most = "50 kW")
        @Nullable
        Power draw,

        @Described(
                value = "It stays with one stage for the whole day, as a mixer that is set up, a set of forms or a"
                        + " scaffold does; a tool that passes from hand to hand does not.",
                usual = "false")
        boolean allDay,

        @Described(
                value = "Percent of the time it is in use that it really draws power, such as 50 for a saw.",
                least = "1",
                most = "100",
                usual = "100")
        int dutyPercent,

        @Described(
                value =
                        "How many times its draw it takes for a moment while it starts: 2 to 3 for saws and mixers, more"
                                + " for pumps and compressors; left out for 1.",
                least = "1",
                most = "10")
        @Nullable
        BigDecimal surgeFactor,

        @Described("What it costs to buy or to hire; left out when it is there already.") @Nullable
        ToolCost cost) {
    public Tool {
        surgeFactor = surgeFactor == null ? null : Measured.normal(surgeFactor);
    }
}
