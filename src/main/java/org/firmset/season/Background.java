package org.firmset.season;

import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * A thread that does one thing after the other. Once it was ended it begins nothing more: what is still asked of an ending
 * program is passed over. Nothing is interrupted, as that would close the database under whoever writes to it.
 */
final class Background {
    private final ThreadPoolExecutor thread;

    Background(String name) {
        thread = new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(),
                Thread.ofPlatform().name(name).daemon().factory(),
                new ThreadPoolExecutor.DiscardPolicy());
    }

    void begin(Runnable work) {
        thread.execute(work);
    }

    void end() {
        thread.shutdown();
        thread.getQueue().clear();
    }

    /** Whether what was under way is over. */
    boolean isOver(long seconds) throws InterruptedException {
        return thread.awaitTermination(seconds, TimeUnit.SECONDS);
    }
}
