package org.firmset.homestead.store;

import java.time.Instant;
import java.util.UUID;
import org.firmset.homestead.Homestead;

/**
 * A homestead as it is kept. The version differs after every change; give it back with the next change, so that a
 * change made meanwhile by someone else is not lost.
 */
public record Kept(UUID id, long version, Instant changedAt, Homestead homestead) {}
