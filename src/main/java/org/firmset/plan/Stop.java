package org.firmset.plan;

import org.jspecify.annotations.Nullable;

/** Ends a planning that nobody waits for any more. Thread-safe; one for each planning. */
public final class Stop {
    private boolean stopped;
    private @Nullable Runnable ending;

    /** What is being looked for is given up soon; whatever still comes of it is worth nothing. */
    public synchronized void stop() {
        stopped = true;
        if (ending != null) {
            ending.run();
        }
    }

    public synchronized boolean isStopped() {
        return stopped;
    }

    /** @param how ends work that cannot ask by itself; null when that is over */
    public synchronized void endBy(@Nullable Runnable how) {
        ending = how;
        if (stopped && how != null) {
            how.run();
        }
    }
}
