package org.firmset.plan;

import java.time.LocalDate;

/** Where the plan before had a stage that is still to do. */
public record Former(String stage, LocalDate start, LocalDate finish) {
    public Former {
        Require.that(
                !finish.isBefore(start),
                "finish [%s] of stage [%s] must not be before its start [%s]",
                finish,
                stage,
                start);
    }
}
