package org.firmset.trade.trace;

import java.util.function.Function;

/**
 * One calculator of the estimating core. Thread-safe; the rooms of the trade list theirs.
 *
 * @param key lower-case letters and hyphens, kept for good: homesteads store it
 * @param name what people call it
 * @param purpose one sentence: what it works out
 * @param inputs a public record whose components are all {@link org.firmset.measure.Described}
 * @param work pure; may throw a {@link Refusal} where inputs contradict each other
 */
public record Kind<I extends Record>(
        String key, String name, String purpose, Class<I> inputs, Function<I, Worksheet> work) {

    /**
     * Works it out.
     *
     * @param given an instance of {@link #inputs()}
     * @throws Refusal when an input is beyond its limits, or inputs contradict each other
     */
    public Worksheet work(Record given) {
        Limits.check(given);
        return work.apply(inputs.cast(given));
    }
}
