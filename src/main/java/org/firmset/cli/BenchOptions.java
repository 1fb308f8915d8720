package org.firmset.cli;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What 'firmset bench plan' is to measure.
 *
 * @param parts tables to print
 * @param sizes of the made-up homesteads
 * @param seeds how many homesteads of each size
 * @param efforts for the proof, ascending, in the solver's units of about a second
 */
record BenchOptions(Set<Part> parts, List<Size> sizes, int seeds, List<Integer> efforts) {
    private static final String SIZES = "12x16,40x40,120x100,400x200";
    private static final String SEEDS = "10";
    private static final String EFFORTS = "1,5,15,30";

    enum Part {
        SIZES,
        STYLES,
        EDITS,
        GROWTH
    }

    record Size(int stages, int weekends) {
        /** Sizes from here on are given fewer plans to build. */
        private static final int LARGE = 120 * 100;

        boolean isLarge() {
            return stages * weekends > LARGE;
        }

        @Override
        public String toString() {
            return stages + " x " + weekends;
        }
    }

    static BenchOptions of(List<String> arguments) {
        Options options = new Options(arguments, Set.of("sizes", "seeds", "efforts"));
        return new BenchOptions(
                parts(options.words(), arguments.isEmpty()),
                list(options.value("sizes").orElse(SIZES))
                        .map(BenchOptions::size)
                        .toList(),
                seeds(options.value("seeds").orElse(SEEDS)),
                list(options.value("efforts").orElse(EFFORTS))
                        .map(BenchOptions::effort)
                        .sorted()
                        .distinct()
                        .toList());
    }

    /** Options without a word narrow the table of sizes, and only that is wanted then. */
    private static Set<Part> parts(List<String> words, boolean all) {
        if (words.isEmpty()) {
            return all ? EnumSet.allOf(Part.class) : EnumSet.of(Part.SIZES);
        }
        Set<Part> parts = EnumSet.noneOf(Part.class);
        words.forEach(word -> parts.add(part(word)));
        return parts;
    }

    private static Part part(String word) {
        return Arrays.stream(Part.values())
                .filter(part -> part.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .orElseThrow(() -> new NotUnderstood(
                        "'" + word + "' is no part of bench plan; write sizes, styles, edits or growth"));
    }

    private static Stream<String> list(String text) {
        return Arrays.stream(text.split(",", -1)).map(String::strip);
    }

    private static Size size(String text) {
        String[] sides = text.split("x", -1);
        Optional<Integer> stages = number(sides[0], 2_000);
        Optional<Integer> weekends = number(sides[sides.length - 1], 520);
        if (sides.length != 2 || stages.isEmpty() || weekends.isEmpty()) {
            throw new NotUnderstood("'" + text
                    + "' is no size; write stages x weekends as 12x16, at most 2000x520, with commas between sizes");
        }
        return new Size(stages.get(), weekends.get());
    }

    private static int seeds(String text) {
        return number(text, 1_000)
                .orElseThrow(() ->
                        new NotUnderstood("'" + text + "' is no number of seeds; write a whole number from 1 to 1000"));
    }

    private static int effort(String text) {
        return number(text, 9_999)
                .orElseThrow(
                        () -> new NotUnderstood(
                                "'" + text
                                        + "' is no effort for a proof; write whole numbers from 1 to 9999 with commas between, as 1,5"));
    }

    private static Optional<Integer> number(String text, int most) {
        return Optional.of(text)
                .filter(t -> t.matches("[1-9]\\d{0,3}"))
                .map(Integer::valueOf)
                .filter(n -> n <= most);
    }
}
