package org.firmset.cli;

import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.Words;
import org.firmset.homestead.takeoff.Catalogue;
import org.firmset.homestead.takeoff.Inputs;
import org.firmset.homestead.takeoff.Worked;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Kind;

/** firmset takeoff: works out quantities from dimensions in the terminal. */
final class TakeoffCommand {
    private final PrintStream out;
    private final PrintStream err;

    TakeoffCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    int run(List<String> arguments) {
        Options options = new Options(arguments, Set.of("units"));
        UnitSystem units = options.value("units").map(Options::units).orElse(UnitSystem.US);
        List<String> words = options.words();
        if (words.isEmpty()) {
            return list();
        }
        Kind<?> kind = Catalogue.find(words.getFirst())
                .orElseThrow(() -> new NotUnderstood(
                        "'" + words.getFirst() + "' is no kind of takeoff; 'firmset takeoff' lists them"));
        if (words.size() == 1) {
            return inputs(kind, units);
        }
        return work(kind, texts(words.subList(1, words.size())), units);
    }

    private int list() {
        Catalogue.shelves().forEach((heading, kinds) -> {
            out.println(heading);
            kinds.forEach(k -> out.printf("  %-18s %s%n", k.key(), k.purpose()));
            out.println();
        });
        out.println("Inputs of one: firmset takeoff KIND. Work it out: firmset takeoff KIND name=value ...");
        return Commands.DONE;
    }

    private int inputs(Kind<?> kind, UnitSystem units) {
        out.printf("%s: %s%n%n", kind.name(), kind.purpose());
        Inputs.of(kind).forEach(i -> input(i.part(), units));
        out.printf("%nSuch as: firmset takeoff %s %s%n", kind.key(), example(kind));
        return Commands.DONE;
    }

    private void input(Part part, UnitSystem units) {
        String usual = part.described().usual();
        String range = part.range(units).isEmpty() ? "" : " " + part.range(units);
        String words = part.type().isEnum()
                ? " One of " + String.join(", ", Words.allOf(part.type()).toList()) + "."
                : "";
        String without = usual.isEmpty() ? part.optional() ? "" : " Needed." : " Usually " + usual + ".";
        out.printf("  %-20s %s%s%s%s%n", part.name(), part.described().value(), range, words, without);
    }

    /** What is needed, or where nothing is, some inputs with their usual values. */
    private static String example(Kind<?> kind) {
        List<Part> parts = Inputs.of(kind).stream().map(Inputs.Input::part).toList();
        List<String> needed = parts.stream()
                .filter(p -> !p.optional() && p.usual() == null)
                .map(p -> p.name() + "=...")
                .toList();
        List<String> usual = parts.stream()
                .filter(p -> p.usual() != null)
                .limit(3)
                .map(p -> "\"" + p.name() + "=" + p.described().usual() + "\"")
                .toList();
        return String.join(" ", needed.isEmpty() ? usual : needed);
    }

    private static Map<String, String> texts(List<String> words) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals < 1) {
                throw new NotUnderstood("'" + word + "' is no input; write name=value, such as \"length=12 ft 6 in\"");
            }
            if (texts.put(word.substring(0, equals), word.substring(equals + 1)) != null) {
                throw new NotUnderstood("'" + word.substring(0, equals) + "' is given twice; write each input once");
            }
        }
        return texts;
    }

    private int work(Kind<?> kind, Map<String, String> texts, UnitSystem units) {
        return switch (Inputs.work(kind, texts)) {
            case Worked.Done done -> {
                out.print(new WorksheetPrinter(kind, done.worksheet(), units).text());
                yield Commands.DONE;
            }
            case Worked.Refused refused -> {
                err.printf(
                        "%s cannot be worked out, %d fault%s:%n",
                        kind.name(), refused.faults().size(), refused.faults().size() == 1 ? "" : "s");
                refused.faults().forEach(f -> err.println("  " + f.line()));
                yield Commands.REFUSED;
            }
        };
    }
}
