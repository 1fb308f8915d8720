package org.firmset.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;
import org.firmset.homestead.file.RecordJson;
import org.firmset.measure.UnitSystem;
import org.firmset.plan.Effort;
import org.firmset.plan.Obstacle;
import org.firmset.plan.Style;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.SeasonReport;

/** firmset plan FILE: prints the season plan of a homestead file. */
final class PlanCommand {
    private static final String TO_SCREEN = "-";

    private final PrintStream out;
    private final PrintStream err;

    PlanCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    int run(List<String> arguments) {
        Options options = new Options(arguments, Set.of("json", "style", "date", "units", "proof"));
        Path file = Path.of(options.onlyWord("homestead file"));
        return switch (read(file)) {
            case Reading.Refused refused -> refuse(file, refused.faults());
            case Reading.Accepted accepted -> plan(accepted.homestead(), options);
        };
    }

    static Reading read(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return HomesteadFile.read(in);
        } catch (IOException e) {
            throw new NotUnderstood("the file " + file + " cannot be read; is the path right?");
        }
    }

    int refuse(Path file, List<Fault> faults) {
        err.printf("%s is not accepted, %d fault%s:%n", file, faults.size(), faults.size() == 1 ? "" : "s");
        faults.forEach(f -> err.println("  " + f.line()));
        return Commands.REFUSED;
    }

    private int plan(Homestead homestead, Options options) {
        LocalDate today = options.value("date").map(PlanCommand::date).orElseGet(LocalDate::now);
        Style style = options.value("style").map(PlanCommand::style).orElse(Style.SOONEST);
        UnitSystem units = options.value("units").map(Options::units).orElse(homestead.units());
        Effort effort = options.value("proof").map(PlanCommand::effort).orElse(Effort.THOROUGH);
        return switch (new SeasonPlanner().plan(homestead, today, style, effort)) {
            case SeasonPlanner.Result.NoPlan noPlan -> noPlan(noPlan.obstacles());
            case SeasonPlanner.Result.Planned planned ->
                print(planned.season().report(), units, options.value("json").orElse(""));
        };
    }

    int noPlan(List<Obstacle> obstacles) {
        err.println("There is no plan:");
        obstacles.forEach(o -> err.println("  " + o.message()));
        return Commands.REFUSED;
    }

    private int print(SeasonReport report, UnitSystem units, String jsonFile) {
        String json = RecordJson.write(SeasonReport.HEADING, report, units);
        if (jsonFile.equals(TO_SCREEN)) {
            out.print(json);
            return Commands.DONE;
        }
        out.print(new PlanPrinter(report, units).text());
        if (!jsonFile.isEmpty()) {
            try {
                Files.writeString(Path.of(jsonFile), json);
            } catch (IOException e) {
                throw new NotUnderstood("the file " + jsonFile + " cannot be written; is the folder there?");
            }
        }
        return Commands.DONE;
    }

    static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new NotUnderstood("'" + text + "' is not a date; write it as 2027-05-01");
        }
    }

    static Effort effort(String text) {
        if (!text.matches("\\d{1,4}")) {
            throw new NotUnderstood("'" + text + "' is no effort for a proof; write a whole number from 0 to 9999");
        }
        return Effort.THOROUGH.withProof(Integer.parseInt(text));
    }

    static Style style(String text) {
        return switch (text) {
            case "soonest" -> Style.SOONEST;
            case "fewest-trips" -> Style.FEWEST_TRIPS;
            case "least-money" -> Style.LEAST_MONEY;
            default ->
                throw new NotUnderstood("'" + text + "' is no style; write soonest, fewest-trips or least-money");
        };
    }
}
