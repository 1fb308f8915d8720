package org.firmset.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;
import org.firmset.trade.haul.splitting.Cargo;
import org.firmset.trade.haul.splitting.Split;
import org.firmset.trade.haul.splitting.Splitter;

/** firmset bench haul: how many runs cargo takes, how far that is proven and how long it takes, as Markdown tables. */
final class BenchHaul {
    private static final int SEEDS = 10;
    private static final int KINDS = 40;
    private static final int PACKS = 5;

    /** Pickup and flat trailer as in the demo, with two people; axles by lever arms, the tongue lifts the front one. */
    private static final Rig RIG = new Rig(
            "rig",
            "Pickup with trailer",
            List.of(new Bay("bed", "Bed", 2_120_000, 3048), new Bay("deck", "Deck", 6_110_000, 6096)),
            List.of(
                    new MassLimit("payload", 567_000, Map.of("bed", 1000, "deck", 120)),
                    new MassLimit("trailer", 1_020_000, Map.of("deck", 1000)),
                    new MassLimit("tow rating", 1_700_000, Map.of("deck", 1000)),
                    new MassLimit("tongue", 110_000, Map.of("deck", 120)),
                    new MassLimit("rear axle", 540_000, Map.of("bed", 920, "deck", 160)),
                    new MassLimit("front axle", 60_000, Map.of("bed", 80, "deck", -40))));

    private final PrintStream out;
    private final List<OpenBins> open;

    BenchHaul(PrintStream out, List<String> arguments) {
        this.out = out;
        Options options = new Options(arguments, Set.of("orlib"));
        if (!options.words().isEmpty()) {
            throw new NotUnderstood("'bench haul' takes no word '"
                    + options.words().getFirst() + "'; write nothing behind it, or --orlib and a file or folder");
        }
        open = options.value("orlib").map(Path::of).map(OpenBins::read).orElse(List.of());
    }

    int run() {
        // the first question loads the solver's library
        Splitter.split(RIG, cargo(0));
        made();
        return open.isEmpty() || bins() ? Commands.DONE : Commands.REFUSED;
    }

    private void made() {
        out.println(
                "| 200 packs of 40 kinds, pickup and trailer | runs | at least | proven | ms | one kind grows: runs | ms |");
        out.println("|---|---|---|---|---|---|---|");
        for (int seed = 1; seed <= SEEDS; seed++) {
            List<Cargo> cargo = cargo(seed);
            long start = System.nanoTime();
            Split split = Splitter.split(RIG, cargo);
            double millis = millis(start);
            List<Cargo> edited = new ArrayList<>(cargo);
            edited.set(seed, cargo.get(seed).withCount(2 * PACKS));
            start = System.nanoTime();
            Split again = Splitter.again(split, RIG, edited);
            out.printf(
                    Locale.ROOT,
                    "| seed %d | %d | %d | %s | %.0f | %d | %.0f |%n",
                    seed,
                    split.runs().size(),
                    split.least(),
                    yes(split.proven()),
                    millis,
                    again.runs().size(),
                    millis(start));
        }
    }

    /** Bags, blocks, boards and boxes of all sorts, a fifth too long for the bed. */
    private static List<Cargo> cargo(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Cargo> cargo = new ArrayList<>();
        for (int i = 0; i < KINDS; i++) {
            boolean isLong = random.nextInt(5) == 0;
            cargo.add(new Cargo(
                    "kind " + i,
                    5_000 + random.nextInt(55_000),
                    5_000 + random.nextInt(145_000),
                    isLong ? 3_500 + random.nextInt(2_500) : 300 + random.nextInt(2_500),
                    PACKS,
                    random.nextInt(10)));
        }
        return cargo;
    }

    private static double millis(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static String yes(boolean is) {
        return is ? "yes" : "no";
    }

    private boolean bins() {
        int right = 0;
        out.println();
        out.println("| instance | known | runs | proven | ms |");
        out.println("|---|---|---|---|---|");
        for (OpenBins instance : open) {
            Rig rig = new Rig(
                    "bin",
                    "Bin",
                    List.of(new Bay("bin", "Bin", 0, 0)),
                    List.of(new MassLimit("capacity", instance.capacity(), Map.of("bin", 1000))));
            List<Cargo> cargo = new ArrayList<>();
            for (int i = 0; i < instance.items().size(); i++) {
                cargo.add(new Cargo("item " + i, instance.items().get(i), 0, 0, 1, 0));
            }
            long start = System.nanoTime();
            Split split = Splitter.split(rig, cargo);
            double millis = millis(start);
            right += split.runs().size() == instance.known() ? 1 : 0;
            out.printf(
                    Locale.ROOT,
                    "| %s | %d | %d | %s | %.0f |%n",
                    instance.name(),
                    instance.known(),
                    split.runs().size(),
                    yes(split.proven()),
                    millis);
        }
        out.printf("%n%d of %d reach the fewest known.%n", right, open.size());
        return right == open.size();
    }
}
