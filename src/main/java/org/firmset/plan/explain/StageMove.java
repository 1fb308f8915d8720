package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.OptionalLong;
import org.firmset.plan.StageStory;
import org.jspecify.annotations.Nullable;

/**
 * A stage that starts or finishes on another date than before, is new, or is gone.
 *
 * @param startBefore null, like {@code finishBefore}, for a new stage
 * @param startAfter null, like {@code finishAfter}, for a stage that is gone
 */
public record StageMove(
        String stage,
        @Nullable LocalDate startBefore,
        @Nullable LocalDate finishBefore,
        @Nullable LocalDate startAfter,
        @Nullable LocalDate finishAfter) {

    static StageMove of(String stage, @Nullable StageStory before, @Nullable StageStory after) {
        return new StageMove(
                stage,
                before == null ? null : before.start(),
                before == null ? null : before.finish(),
                after == null ? null : after.start(),
                after == null ? null : after.finish());
    }

    public boolean isNew() {
        return startBefore == null;
    }

    public boolean isGone() {
        return startAfter == null;
    }

    /** Calendar days by which it starts later, negative for sooner; empty for a new stage and one that is gone. */
    public OptionalLong startDays() {
        return FinishMove.between(startBefore, startAfter);
    }

    /** Calendar days by which it finishes later, negative for sooner; empty for a new stage and one that is gone. */
    public OptionalLong finishDays() {
        return FinishMove.between(finishBefore, finishAfter);
    }
}
