package org.firmset.cli;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;

/**
 * The most heap that is really needed while something runs: all memory is collected over and over meanwhile, and what is
 * left counts. This slows what is watched many times, so times are taken in another run.
 */
final class LiveHeap {
    private static final long BETWEEN_MILLIS = 150;

    private LiveHeap() {}

    /** What is needed when nothing runs. */
    static long mebibytesNow() {
        return collected() >> 20;
    }

    static long mebibytes(Runnable work) {
        AtomicBoolean done = new AtomicBoolean();
        Thread watched = Thread.ofPlatform().start(() -> {
            try {
                work.run();
            } finally {
                done.set(true);
            }
        });
        long most = 0;
        try {
            while (!done.get()) {
                most = Math.max(most, collected());
                Thread.sleep(BETWEEN_MILLIS);
            }
            watched.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return most >> 20;
    }

    private static long collected() {
        System.gc();
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getCollectionUsage)
                .flatMap(Stream::ofNullable)
                .mapToLong(MemoryUsage::getUsed)
                .sum();
    }
}
