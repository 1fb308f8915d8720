package org.firmset.homestead;

import org.firmset.measure.Described;
import org.firmset.measure.Speed;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

@Described("What the weather must be like for a stage.")
public record Conditions(
        @Described("The usual night of the date may not be colder; left out for no limit.") @Nullable
        Temperature coldestNight,

        @Described("The usual day of the date may not be hotter; left out for no limit.") @Nullable
        Temperature hottestDay,

        @Described("It needs a dry day; checked before departure.")
        boolean dryDay,

        @Described("The usual day of the date must be at least so warm; left out for no limit.") @Nullable
        Temperature coldestDay,

        @Described(value = "The wind may not be stronger; left out for no limit.", least = "0 m/s", most = "60 m/s")
        @Nullable
        Speed mostWind,

        @Described(value = "The ground may not be frozen.", usual = "false")
        boolean unfrozenGround,

        @Described(
                value =
                        "The plan uses no day on which the odds of fit weather are less than so many percent; left out for"
                                + " any.",
                least = "1",
                most = "99")
        @Nullable
        Integer leastOdds) {}
