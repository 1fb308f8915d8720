/** From a plan to its report in words; plans a homestead and tells the plan. */
@NullMarked
package org.firmset.season.report;

import org.jspecify.annotations.NullMarked;
