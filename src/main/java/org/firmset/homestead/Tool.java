package org.firmset.homestead;

import org.firmset.measure.Described;
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

        @Described("What it costs to buy or to hire; left out when it is there already.") @Nullable
        ToolCost cost) {}
