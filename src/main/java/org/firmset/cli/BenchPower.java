package org.firmset.cli;

import java.io.PrintStream;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.IntSupplier;
import java.util.stream.IntStream;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Horizon;
import org.firmset.trade.climate.Sunlight;
import org.firmset.trade.power.Battery;
import org.firmset.trade.power.ChargeCurve;
import org.firmset.trade.power.ColdShare;
import org.firmset.trade.power.Generator;
import org.firmset.trade.power.Inverter;
import org.firmset.trade.power.Panels;
import org.firmset.trade.power.PowerBlock;
import org.firmset.trade.power.PowerDay;
import org.firmset.trade.power.PowerSystem;
import org.firmset.trade.power.Remedy;
import org.firmset.trade.power.SunCurve;
import org.firmset.trade.power.Tool;
import org.firmset.trade.power.WorkSplit;

/** firmset bench power: how long light, sun and battery take to work out, as a Markdown table. */
final class BenchPower {
    private static final int WARM = 20;
    private static final int MEASURED = 20;
    private static final int HOURLY = 60;
    private static final LocalDate FIRST = LocalDate.of(2027, 1, 1);
    private static final Tool MIXER = new Tool("mixer", 600, 50, 3);
    private static final SunCurve.Site SITE = new SunCurve.Site(
            new Coordinates(39.7, -105.2, ZoneId.of("America/Denver")),
            Horizon.FLAT,
            new Panels(400, 30, 180, 25, 0, 45, Panels.SunKnown.ON_PANELS));
    private static final PowerSystem SYSTEM = new PowerSystem(
            new Battery(2000, 20, 95, 95, ColdShare.LITHIUM, 0),
            400,
            new Inverter(2000, 4000, 90),
            new Generator(1000, 0.6, 2, LocalTime.of(8, 0), 240));

    private final PrintStream out;

    BenchPower(PrintStream out) {
        this.out = out;
    }

    int run() {
        List<PowerDay> year = days(365);
        List<PowerDay> trip = days(3);
        WorkSplit.Work bags = new WorkSplit.Work(MIXER, 12, LocalTime.of(9, 0), 480);
        out.println("| what | ms |");
        out.println("|---|---|");
        row("light of a year", () -> (int) IntStream.range(0, 365)
                .mapToLong(d ->
                        Sunlight.sun(SITE.place(), FIRST.plusDays(d)).length().toMinutes())
                .sum());
        row("sun of a year, hourly steps", () -> days(365).size());
        row(
                "battery over a year, hourly steps",
                () -> ChargeCurve.of(SYSTEM, year, 100).points().size());
        row(
                "bags over three days",
                () -> 1 + WorkSplit.of(SYSTEM, trip, 100, bags, 100).left());
        row(
                "what it would take for three days",
                () -> 1 + Remedy.of(SYSTEM, trip, 30).size());
        new BenchPowerRule(out).run();
        return Commands.DONE;
    }

    private void row(String what, IntSupplier work) {
        repeat(what, work, WARM);
        long start = System.nanoTime();
        repeat(what, work, MEASURED);
        out.printf(Locale.ROOT, "| %s | %.2f |%n", what, (System.nanoTime() - start) / 1e6 / MEASURED);
    }

    private static void repeat(String what, IntSupplier work, int times) {
        for (int i = 0; i < times; i++) {
            if (work.getAsInt() == 0) {
                throw new IllegalStateException("nothing came out of " + what);
            }
        }
    }

    private static List<PowerDay> days(int count) {
        PowerBlock work = new PowerBlock(MIXER, LocalTime.of(9, 0), 180);
        return IntStream.range(0, count)
                .mapToObj(FIRST::plusDays)
                .map(date -> new PowerDay(
                        date, SunCurve.of(SITE, new SunCurve.Day(date, 4, 10), HOURLY), 10, 10, List.of(work), 0))
                .toList();
    }
}
