package org.firmset.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.firmset.homestead.takeoff.Catalogue;
import org.firmset.homestead.takeoff.Inputs;
import org.firmset.trade.climate.DailyTemperature;
import org.firmset.trade.cure.Ageing;
import org.firmset.trade.cure.CureTable;
import org.firmset.trade.cure.StrengthCurve;
import org.firmset.trade.cure.StrengthGoal;
import org.firmset.trade.takeoff.cutting.CutPlan;
import org.firmset.trade.takeoff.cutting.CuttingStock;
import org.firmset.trade.takeoff.cutting.Demand;
import org.firmset.trade.takeoff.cutting.Stock;
import org.firmset.trade.trace.Kind;

/** firmset bench takeoff: how long quantities take to work out, as Markdown tables. */
final class BenchTakeoffs {
    private static final int WARM = 400;
    private static final int MEASURED = 400;

    /** Inputs that have no usual value. */
    private static final Map<String, Map<String, String>> SAMPLES = Map.ofEntries(
            Map.entry("block-wall", Map.of("length", "9 ft 4 in", "width", "9 ft 4 in", "height", "24 in")),
            Map.entry("wall-fill", Map.of("length", "9 ft 4 in", "width", "9 ft 4 in", "height", "24 in")),
            Map.entry("bond-beam", Map.of("length", "34 ft 8 in")),
            Map.entry("slab", Map.of("plan", "12 ft x 10 ft", "thickness", "4 in")),
            Map.entry("footing", Map.of("length", "30 ft", "footingWidth", "16 in", "depth", "8 in")),
            Map.entry("pads", Map.of("plan", "round 12 in", "height", "4 ft", "count", "12")),
            Map.entry("forms", Map.of("edge", "44 ft")),
            Map.entry("batches", Map.of("bags", "67")),
            Map.entry("bags-or-truck", Map.of("volume", "2 yd3", "bagPrice", "6.50", "truckPrice", "180")),
            Map.entry("bar", Map.of("bar", "no-4")),
            Map.entry("bent-bar", Map.of("bar", "no-4", "legs", "106 in, 8 in", "count", "18")),
            Map.entry("bar-mat", Map.of("length", "12 ft", "width", "10 ft", "bar", "no-4")),
            Map.entry("bar-run", Map.of("run", "34 ft 8 in", "bar", "no-4")),
            Map.entry("cut-list", Map.of("pieces", "8 x 112 in, 10 x 88 in, 12 x 56 in, 6 x 40 in")),
            Map.entry("base-fill", Map.of("plan", "ring 12 ft, 8 ft", "depth", "18 in")),
            Map.entry("dig", Map.of("plan", "12 ft x 10 ft", "depth", "1 ft")),
            Map.entry("lumber", Map.of("pieces", "48 x 92 5/8 in, 7 x 16 ft")),
            Map.entry("panels", Map.of("area", "382 ft2")),
            Map.entry("lengths", Map.of("total", "120 ft")),
            Map.entry("fasteners", Map.of("sheets", "13")),
            Map.entry("coating", Map.of("area", "382 ft2")),
            Map.entry("counted", Map.of("number", "6")),
            Map.entry("cure", Map.of("poured", "2027-05-15")));

    private final PrintStream out;

    BenchTakeoffs(PrintStream out) {
        this.out = out;
    }

    int run() {
        out.println("| takeoff | microseconds |");
        out.println("|---|---|");
        Catalogue.all().forEach(this::row);
        out.println();
        out.println("| cut list, 200 pieces of 40 lengths | bars | proven | ms |");
        out.println("|---|---|---|---|");
        for (int seed = 1; seed <= 10; seed++) {
            cuts(seed);
        }
        out.println();
        cures();
        return Commands.DONE;
    }

    /** Reading the texts is not measured, and nothing is remembered: each time the work itself. */
    private void row(Kind<?> kind) {
        Record inputs = Inputs.read(kind, SAMPLES.getOrDefault(kind.key(), Map.of()))
                .orElseThrow(() -> new IllegalStateException("the sample of " + kind.key() + " is not accepted"));
        repeat(kind, inputs, WARM);
        long start = System.nanoTime();
        repeat(kind, inputs, MEASURED);
        out.printf(Locale.ROOT, "| %s | %.0f |%n", kind.key(), (System.nanoTime() - start) / 1e3 / MEASURED);
    }

    private static void repeat(Kind<?> kind, Record inputs, int times) {
        for (int i = 0; i < times; i++) {
            if (kind.work(inputs).lines().isEmpty()) {
                throw new IllegalStateException("the worksheet of " + kind.key() + " is empty");
            }
        }
    }

    private void cuts(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            demands.add(new Demand(300 + random.nextInt(2700), 5));
        }
        long start = System.nanoTime();
        CutPlan plan = CuttingStock.plan(List.of(new Stock(6096, 1, Stock.UNLIMITED)), demands, 3)
                .orElseThrow();
        out.printf(
                Locale.ROOT,
                "| seed %d | %d | %s | %.0f |%n",
                seed,
                plan.cost(),
                plan.proven() ? "yes" : "no, at least " + plan.bound(),
                (System.nanoTime() - start) / 1e6);
    }

    private void cures() {
        StrengthGoal goal = new StrengthGoal(0.7, StrengthCurve.EN_NORMAL, Ageing.EN_1992);
        DailyTemperature year = date -> 8 - 14 * Math.cos(2 * Math.PI * date.getDayOfYear() / 365);
        LocalDate first = LocalDate.of(2027, 1, 1);
        for (int i = 0; i < WARM; i++) {
            CureTable.of(goal, year, first, first.plusDays(364));
        }
        long start = System.nanoTime();
        int days = 0;
        for (int i = 0; i < MEASURED; i++) {
            days += CureTable.of(goal, year, first, first.plusDays(364)).daysAfter(first);
        }
        out.printf(
                Locale.ROOT,
                "A year of ends of a cure: %.2f ms (a pour on 1 January waits %d days).%n",
                (System.nanoTime() - start) / 1e6 / MEASURED,
                days / MEASURED);
    }
}
