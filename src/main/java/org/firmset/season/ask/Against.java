package org.firmset.season.ask;

import org.firmset.homestead.SpendingLimit;
import org.firmset.plan.Style;

/** What the plan now is set side by side with. */
public sealed interface Against {

    /** The plan before the last change of the homestead. */
    record PlanBefore() implements Against {}

    /** The plan that another style makes of the homestead as it is. */
    record OtherStyle(Style style) implements Against {}

    /** The plan of the homestead as it is with this limit to what a month may take. */
    record Limited(SpendingLimit limit) implements Against {}
}
