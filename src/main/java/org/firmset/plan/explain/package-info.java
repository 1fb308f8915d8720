/**
 * Why a plan is another than before: what moved, what changed in the problem, and which change moved what. Pure, and may
 * use {@code org.firmset.plan} alone; whoever asks for causes brings the planner.
 */
@NullMarked
package org.firmset.plan.explain;

import org.jspecify.annotations.NullMarked;
