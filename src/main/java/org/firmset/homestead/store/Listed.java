package org.firmset.homestead.store;

import java.time.Instant;
import java.util.UUID;

/** A kept homestead as a list shows it. */
public record Listed(UUID id, String name, Instant changedAt) {}
