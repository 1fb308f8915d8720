package org.firmset.homestead;

import org.firmset.measure.Described;
import org.jspecify.annotations.Nullable;

@Described("What must pass between the finish of one stage and the start of another.")
public record Wait(
        @Described(value = "Key of the wait.", key = true) String key,
        @Described("Name of the wait.") String name,
        @Described("Why it is there.") WaitKind kind,

        @Described(value = "The stage before.", names = "stage")
        String from,

        @Described(value = "The stage after.", names = "stage")
        String to,

        @Described(value = "Calendar days that must pass at least; 0 allows the same day.", least = "0", most = "3650")
        int leastDays,

        @Described("The cure that must be over as well; left out for none.") @Nullable
        Cure cure,

        @Described(
                value = "The stage after must start at most so many calendar days later; left out for no limit.",
                least = "0",
                most = "3650")
        @Nullable
        Integer mostDays) {}
