/** From a homestead to its planning problem, its season plan and the words for it. */
@NullMarked
package org.firmset.season;

import org.jspecify.annotations.NullMarked;
