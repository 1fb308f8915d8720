package org.firmset.season.store;

import java.util.UUID;
import org.firmset.spend.Baseline;

/** A budget as it was kept; it never changes. */
public record KeptBaseline(UUID id, Baseline budget) {}
