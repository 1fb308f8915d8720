/** Keeps season plans. */
@NullMarked
package org.firmset.season.store;

import org.jspecify.annotations.NullMarked;
