package org.firmset.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The middle of what was measured; of the two in the middle their mean. */
final class Median {
    private Median() {}

    /** @param format how the median is printed; a dash stands where nothing was measured */
    static String text(String format, Stream<Double> measured) {
        List<Double> sorted = measured.sorted().toList();
        return sorted.isEmpty() ? TimedPlan.NONE : String.format(Locale.ROOT, format, of(sorted));
    }

    /** @param measured at least one */
    static double of(List<Double> measured) {
        List<Double> sorted = measured.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }

    /** The times of those that came to a plan. */
    static String millis(Stream<TimedPlan> plans) {
        return text("%.1f", plans.filter(p -> p.plan().isPresent()).map(TimedPlan::millis));
    }
}
