/** What trips carry and where it lies, what to buy when, what lies on site, and what a change on the day means. */
@NullMarked
package org.firmset.season.load;

import org.jspecify.annotations.NullMarked;
