package org.firmset.homestead;

import java.time.LocalDate;
import org.firmset.measure.Described;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

@Described("Something to be paid that no stage uses up: a permit, a test, a day of a hired digger.")
public record BudgetItem(
        @Described("What it is.") String name,

        @Described("What it is for.") BudgetKind kind,

        @Described(value = "The subproject that bears it.", names = "subproject")
        String subproject,

        @Described(value = "The stage that bears it; left out for the whole subproject.", names = "stage") @Nullable
        String stage,

        @Described("All that it costs, with what was paid of it already.")
        Money amount,

        @Described("When it is to be paid; left out for the start of its stage, or for the next trip.") @Nullable
        LocalDate on) {}
