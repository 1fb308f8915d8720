package org.firmset.season.result;

import org.firmset.homestead.Homestead;

/** A plan with the homestead it was made of. */
public record PlannedHomestead(Homestead homestead, PlannedSeason season) {}
