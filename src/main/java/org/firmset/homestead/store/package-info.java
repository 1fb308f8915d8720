/**
 * Keeps homesteads in a relational database, whole and in step with their records; only {@link Homesteads} and what it
 * gives back are for others. Nothing outside this package knows how the homestead is stored.
 */
@NullMarked
package org.firmset.homestead.store;

import org.jspecify.annotations.NullMarked;
