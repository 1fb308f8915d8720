package org.firmset.plan;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A building or system with its own finish.
 *
 * @param weight how much a day of its finish counts against a day of another's, 1 to 1000
 * @param target the date its owners hope for; shown, not enforced
 */
public record Subproject(
        String id, String name, int weight, @Nullable LocalDate target) {
    public Subproject {
        Require.that(weight >= 1 && weight <= 1000, "weight [%d] of subproject [%s] must be 1 to 1000", weight, id);
    }
}
