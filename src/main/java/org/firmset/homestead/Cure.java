package org.firmset.homestead;

import org.firmset.measure.Described;

@Described(
        "A cure up to a share of the 28-day strength, reckoned with the usual temperatures of the dates it runs over.")
public record Cure(
        @Described(value = "Percent of the 28-day strength.", least = "1", most = "100")
        int strengthPercent,

        @Described("How fast the cement gains strength.") CementClass cement) {}
