/**
 * The independent checker: says of any schedule which hard rules of the {@linkplain org.firmset.plan season plan} it
 * breaks, worked out from those rules alone. May use {@code org.firmset.plan} and nothing of whatever made the schedule.
 */
@NullMarked
package org.firmset.plan.check;

import org.jspecify.annotations.NullMarked;
