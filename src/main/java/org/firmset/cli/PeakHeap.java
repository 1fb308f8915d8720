package org.firmset.cli;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.stream.Stream;

/** The most heap memory in use since it was set back, with what is not yet collected. */
final class PeakHeap {
    private PeakHeap() {}

    static void setBack() {
        System.gc();
        pools().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    /** The sum over the pools; they may have had their peaks at different times, so it is rather too much than too little. */
    static long mebibytes() {
        return pools().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20;
    }

    private static Stream<MemoryPoolMXBean> pools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }
}
