package org.firmset.season;

import org.firmset.plan.Effort;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How much the longer look behind the pages may take. One thread makes first plans, one looks longer, one answers
 * questions, and the solver works on the thread that asks it.
 *
 * @param plans plans it builds, 1 or more
 * @param proof how hard it looks for a proof, in the solver's units of about a second; 0 for simple bounds only
 * @param solver false to do without the solver's native library and the memory it takes
 */
@ConfigurationProperties("firmset.planner")
public record PlannerSettings(
        @DefaultValue("5000") int plans,
        @DefaultValue("4") int proof,
        @DefaultValue("true") boolean solver) {

    public PlannerSettings {
        if (plans < 1 || proof < 0) {
            throw new IllegalArgumentException("firmset.planner.plans [" + plans + "] must be 1 or more and"
                    + " firmset.planner.proof [" + proof + "] 0 or more");
        }
    }

    Effort searching() {
        return new Effort(plans, Effort.THOROUGH.seed(), 0);
    }

    Effort proving() {
        return new Effort(plans, Effort.THOROUGH.seed(), proof);
    }
}
