package org.firmset.homestead;

import java.time.LocalDate;
import org.firmset.measure.Described;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("A building or system with its own budget and target date.")
public record Subproject(
        @Described(value = "Key of the subproject.", key = true)
        String key,

        @Described("Name of the subproject.") String name,
        @Described("What may be spent on it.") Money budget,

        @Described(
                value = "How much a day of its finish counts against a day of another's.",
                least = "1",
                most = "1000")
        int priority,

        @Described("The date its owners hope for; left out for none.") @Nullable
        LocalDate target) {}
