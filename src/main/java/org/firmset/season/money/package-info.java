/**
 * The money of a season: what is still to be paid by the plan and when, what everything comes to, and how that differs from
 * a kept budget. Pure: homestead, plan and receipts in, records and words out. Rules are in docs/spend.md.
 */
@NullMarked
package org.firmset.season.money;

import org.jspecify.annotations.NullMarked;
