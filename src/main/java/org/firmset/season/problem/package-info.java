/** From a homestead to its planning problem. */
@NullMarked
package org.firmset.season.problem;

import org.jspecify.annotations.NullMarked;
