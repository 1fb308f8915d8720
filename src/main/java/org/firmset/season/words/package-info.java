/** How dates, counts, styles and tables are put into words. */
@NullMarked
package org.firmset.season.words;

import org.jspecify.annotations.NullMarked;
