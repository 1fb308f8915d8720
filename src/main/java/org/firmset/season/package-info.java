/** Keeps the season plan of each homestead in step with its changes, and answers what is asked of it. */
@NullMarked
package org.firmset.season;

import org.jspecify.annotations.NullMarked;
