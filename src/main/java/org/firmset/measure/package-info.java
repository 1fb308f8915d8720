/** Quantities and money at the edge: read them as people write them, keep them in SI, show them in the units people use. */
@NullMarked
package org.firmset.measure;

import org.jspecify.annotations.NullMarked;
