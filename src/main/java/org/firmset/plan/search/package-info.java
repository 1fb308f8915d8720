/** The constructive planner: builds plans stage by stage in milliseconds and searches over the order of the stages. */
@NullMarked
package org.firmset.plan.search;

import org.jspecify.annotations.NullMarked;
