package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Described("What the weather must be like for a stage.")
public record Conditions(
        @Described("The usual night of the date may not be colder; left out for no limit.") @Nullable
        Temperature coldestNight,

        @Described("The usual day of the date may not be hotter; left out for no limit.") @Nullable
        Temperature hottestDay,

        @Described("It needs a dry day; checked before departure.")
        boolean dryDay) {}
