/** What planning came to: the plan of a homestead and the report that tells it, as records. */
@NullMarked
package org.firmset.season.result;

import org.jspecify.annotations.NullMarked;
