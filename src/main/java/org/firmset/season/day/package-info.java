/** What a date can hold: light, sun and power, weather and its odds, and the words for it. */
@NullMarked
package org.firmset.season.day;

import org.jspecify.annotations.NullMarked;
