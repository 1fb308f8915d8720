package org.firmset.season.store;

import java.time.Instant;
import java.util.UUID;
import org.firmset.season.result.SeasonReport;

/**
 * A season plan as it was made.
 *
 * @param homesteadVersion the state of the homestead that was planned
 */
public record KeptPlan(UUID homestead, long homesteadVersion, Instant madeAt, SeasonReport report) {}
