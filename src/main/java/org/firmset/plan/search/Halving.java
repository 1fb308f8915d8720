package org.firmset.plan.search;

import java.util.function.IntPredicate;

/** Finds the last number that something holds for, where it holds for none beyond. */
final class Halving {
    private Halving() {}

    /** @param holds known to hold for {@code first} and not for {@code beyond} */
    static int last(int first, int beyond, IntPredicate holds) {
        int low = first;
        int high = beyond;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
