package org.firmset.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/** firmset bench: measures, and prints what it measured as Markdown tables. */
final class BenchCommand {
    private final PrintStream out;

    BenchCommand(PrintStream out) {
        this.out = out;
    }

    int run(List<String> arguments) {
        if (!arguments.isEmpty() && arguments.getFirst().equals("plan")) {
            BenchOptions options = BenchOptions.of(arguments.subList(1, arguments.size()));
            machine();
            return new BenchPlans(out, options).run();
        }
        if (arguments.equals(List.of("takeoff"))) {
            machine();
            return new BenchTakeoffs(out).run();
        }
        if (!arguments.isEmpty() && arguments.getFirst().equals("spend")) {
            BenchSpend spend = new BenchSpend(out, arguments.subList(1, arguments.size()));
            machine();
            return spend.run();
        }
        if (!arguments.isEmpty() && arguments.getFirst().equals("haul")) {
            BenchHaul haul = new BenchHaul(out, arguments.subList(1, arguments.size()));
            machine();
            return haul.run();
        }
        if (arguments.equals(List.of("power"))) {
            machine();
            return new BenchPower(out).run();
        }
        if (arguments.size() == 2 && arguments.getFirst().equals("psplib")) {
            machine();
            return new BenchProjects(out, Path.of(arguments.getLast())).run();
        }
        throw new NotUnderstood(
                "'bench' measures; write 'firmset bench plan', 'firmset bench takeoff', 'firmset bench haul', 'firmset bench power', 'firmset bench spend' or 'firmset bench psplib FOLDER'");
    }

    private void machine() {
        out.printf(
                "%s %s, Java %s, %d processors, heap limit %d MiB%n%n",
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                Runtime.version().feature(),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
    }
}
