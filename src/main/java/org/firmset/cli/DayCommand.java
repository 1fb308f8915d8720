package org.firmset.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.file.Reading;
import org.firmset.measure.Hours;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.UnitsFault;
import org.firmset.season.day.DayOutlook;
import org.firmset.season.day.DayOutlookWriter;
import org.firmset.season.day.DayPowerWords;
import org.firmset.season.day.DayWords;
import org.firmset.season.words.Dates;

/** firmset day FILE --date D: what a date can hold of light, weather and power, with some work or without. */
final class DayCommand {
    private static final Set<String> OPTIONS = Set.of("date", "people", "generator", "units");
    private static final String WORK = "--work";

    private final PrintStream out;
    private final PlanCommand plans;

    DayCommand(PrintStream out, PrintStream err) {
        this.out = out;
        plans = new PlanCommand(out, err);
    }

    int run(List<String> arguments) {
        List<DayOutlook.Work> work = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (argument.equals(WORK) && i + 1 < arguments.size()) {
                work.add(work(arguments.get(++i)));
            } else if (argument.startsWith(WORK + "=")) {
                work.add(work(argument.substring(WORK.length() + 1)));
            } else {
                rest.add(argument);
            }
        }
        Options options = new Options(rest, OPTIONS);
        Path file = Path.of(options.onlyWord("homestead file"));
        return switch (PlanCommand.read(file)) {
            case Reading.Refused refused -> plans.refuse(file, refused.faults());
            case Reading.Accepted accepted -> print(accepted.homestead(), options, work);
        };
    }

    private static DayOutlook.Work work(String text) {
        int equals = text.lastIndexOf('=');
        String hours = text.substring(equals + 1).strip();
        try {
            if (equals > 0) {
                Hours labour = Hours.parse(hours.matches("[\\d.]+") ? hours + " h" : hours);
                if (!labour.isNone()) {
                    return new DayOutlook.Work(text.substring(0, equals), labour);
                }
            }
        } catch (UnitsFault e) {
            throw new NotUnderstood("'--work " + text + "': " + e.getMessage());
        }
        throw new NotUnderstood("'--work " + text
                + "' is not understood; write the key of a stage and hours of labour, as --work wall=6.5");
    }

    private int print(Homestead homestead, Options options, List<DayOutlook.Work> work) {
        work.forEach(w -> known(homestead, w.stage()));
        LocalDate date = options.value("date").map(PlanCommand::date).orElseGet(LocalDate::now);
        UnitSystem units = options.value("units").map(Options::units).orElse(homestead.units());
        DayOutlookWriter writer = new DayOutlookWriter(homestead);
        int people =
                options.value("people").map(t -> number("people", t, 1, 50)).orElseGet(() -> writer.people(date));
        int generator = options.value("generator")
                .map(t -> number("generator", t, 0, 1440))
                .orElse(0);
        print(writer.of(List.of(new DayOutlook.Asked(date, work, people, generator))), people, new DayWords(units));
        return Commands.DONE;
    }

    private static void known(Homestead homestead, String key) {
        if (homestead.stages().stream().noneMatch(s -> s.key().equals(key))) {
            throw new NotUnderstood("'" + key + "' is no stage; there are "
                    + homestead.stages().stream().map(Stage::key).collect(Collectors.joining(", ")));
        }
    }

    private static int number(String option, String text, int least, int most) {
        if (!text.matches("\\d{1,4}") || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            throw new NotUnderstood("'--%s %s' is not understood; write a whole number from %d to %d"
                    .formatted(option, text, least, most));
        }
        return Integer.parseInt(text);
    }

    private void print(DayOutlook day, int people, DayWords words) {
        out.println("DAY  " + Dates.date(day.date()));
        out.print(TablePrinter.text(words.light(day)));
        out.print(TablePrinter.text(words.weather(day)));
        if (!day.odds().isEmpty()) {
            out.println();
            out.print(TablePrinter.text(words.odds(day)));
        }
        if (!day.work().isEmpty()) {
            out.println();
            out.printf("Shared by %d %s%n", people, people == 1 ? "person" : "people");
            out.print(TablePrinter.text(DayPowerWords.work(day)));
        }
        out.println();
        if (day.power().isEmpty()) {
            out.println("There is no power on site.");
        }
        DayPowerWords.sentences(day).forEach(out::println);
        day.power().ifPresent(p -> {
            out.println("The battery is full at midnight.");
            out.print(TablePrinter.text(DayPowerWords.hours(day, p)));
        });
        out.println();
        out.println("Cautions");
        day.cautions().forEach(c -> out.println("  " + c));
        out.println("  " + Cautions.STANDING);
    }
}
