/** Whole journeys through the program in a real browser. */
@NullMarked
package org.firmset.journey;

import org.jspecify.annotations.NullMarked;
