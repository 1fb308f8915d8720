/** Published values beside computed ones: the rows of each room, the test that holds them, the page made of them. */
@NullMarked
package org.firmset.trade.checks;

import org.jspecify.annotations.NullMarked;
