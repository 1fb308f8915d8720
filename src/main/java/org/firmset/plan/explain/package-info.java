/**
 * Why a plan is as it is, found by planning again with something changed: what would let a subproject finish sooner, what
 * a trip is good for, and which rules clash when there is no plan. Pure, and apart from how plans are made.
 */
@NullMarked
package org.firmset.plan.explain;

import org.jspecify.annotations.NullMarked;
