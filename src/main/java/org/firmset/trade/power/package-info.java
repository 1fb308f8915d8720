/** What sun, battery and generator give. Pure. */
@NullMarked
package org.firmset.trade.power;

import org.jspecify.annotations.NullMarked;
