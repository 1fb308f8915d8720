package org.firmset.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.file.Reading;
import org.firmset.measure.Dimension;
import org.firmset.measure.Mass;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.measure.UnitsFault;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.load.DayChange;
import org.firmset.season.load.LoadChange;
import org.firmset.season.load.TripLoads;
import org.firmset.season.load.TripLoadsWriter;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;

/** firmset loads FILE --trip N: what a trip carries, where each pack lies and what to buy, or what a change on the day means. */
final class LoadsCommand {
    private static final Set<String> OPTIONS = Set.of("trip", "style", "date", "units", "proof", "more-people");

    private final PrintStream out;
    private final PlanCommand plans;

    LoadsCommand(PrintStream out, PrintStream err) {
        this.out = out;
        plans = new PlanCommand(out, err);
    }

    /** What is said of the day: packs by material, whether the trailer stays, and who rides along. */
    private record OfTheDay(Map<String, Integer> had, boolean trailerStaysHome, Optional<Mass> morePeople) {
        boolean isNothing() {
            return had.isEmpty() && !trailerStaysHome && morePeople.isEmpty();
        }
    }

    int run(List<String> arguments) {
        Map<String, Integer> had = new HashMap<>();
        List<String> rest = new ArrayList<>();
        boolean trailerStaysHome = false;
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (argument.equals("--without-trailer")) {
                trailerStaysHome = true;
            } else if (argument.equals("--had") && i + 1 < arguments.size()) {
                addHad(had, arguments.get(++i));
            } else if (argument.startsWith("--had=")) {
                addHad(had, argument.substring("--had=".length()));
            } else {
                rest.add(argument);
            }
        }
        Options options = new Options(rest, OPTIONS);
        OfTheDay day =
                new OfTheDay(had, trailerStaysHome, options.value("more-people").map(LoadsCommand::mass));
        Path file = Path.of(options.onlyWord("homestead file"));
        String trip = options.value("trip")
                .orElseThrow(() -> new NotUnderstood("name the trip: --trip 1, or --trip and its first date"));
        return switch (PlanCommand.read(file)) {
            case Reading.Refused refused -> plans.refuse(file, refused.faults());
            case Reading.Accepted accepted -> planned(accepted.homestead(), options, trip, day);
        };
    }

    private static void addHad(Map<String, Integer> had, String text) {
        int equals = text.lastIndexOf('=');
        if (equals < 1 || !text.substring(equals + 1).matches("\\d{1,6}")) {
            throw new NotUnderstood("'--had " + text
                    + "' is not understood; write the key of a material and packs, as --had cement=12");
        }
        had.put(text.substring(0, equals), Integer.parseInt(text.substring(equals + 1)));
    }

    /** A bare number is kilograms. */
    private static Mass mass(String text) {
        try {
            Mass mass = (Mass)
                    Units.parse(Dimension.MASS, text.strip().matches("[\\d.]+") ? text.strip() + " kg" : text.strip());
            if (mass.value().signum() < 0) {
                throw new NotUnderstood("'--more-people " + text + "' must not be under zero");
            }
            return mass;
        } catch (UnitsFault e) {
            throw new NotUnderstood("'--more-people': " + e.getMessage());
        }
    }

    private int planned(Homestead homestead, Options options, String trip, OfTheDay day) {
        day.had().keySet().forEach(key -> known(homestead, key));
        LocalDate today = options.value("date").map(PlanCommand::date).orElseGet(LocalDate::now);
        Style style = options.value("style").map(PlanCommand::style).orElse(Style.SOONEST);
        Effort effort = options.value("proof").map(PlanCommand::effort).orElse(Effort.THOROUGH);
        UnitSystem units = options.value("units").map(Options::units).orElse(homestead.units());
        return switch (new SeasonPlanner().plan(homestead, today, style, effort)) {
            case SeasonPlanner.Result.NoPlan noPlan -> plans.noPlan(noPlan.obstacles());
            case SeasonPlanner.Result.Planned planned ->
                print(homestead, planned.season(), key(planned.season().report(), trip), units, day);
        };
    }

    private static void known(Homestead homestead, String key) {
        List<Material> materials = WaterWriter.materials(homestead);
        if (materials.stream().noneMatch(m -> m.key().equals(key))) {
            throw new NotUnderstood("'" + key + "' is no material; there are "
                    + materials.stream().map(Material::key).collect(Collectors.joining(", ")));
        }
    }

    private static String key(SeasonReport report, String trip) {
        return report.madeTrips().stream()
                .filter(t ->
                        t.key().equals(trip) || Integer.toString(t.number()).equals(trip))
                .findFirst()
                .map(SeasonReport.TripPart::key)
                .orElseThrow(() -> new NotUnderstood("'" + trip + "' is no trip of the plan; it makes "
                        + report.madeTrips().stream()
                                .map(t -> t.number() + " (" + t.key() + ")")
                                .collect(Collectors.joining(", "))));
    }

    private int print(Homestead homestead, PlannedSeason season, String trip, UnitSystem units, OfTheDay day) {
        if (day.isNothing()) {
            TripLoads loads = TripLoadsWriter.of(homestead, season, trip);
            out.print(new LoadsPrinter(loads, units).text());
        } else {
            DayChange change = new DayChange(
                    trip, day.had(), day.trailerStaysHome(), day.morePeople().orElseGet(() -> Mass.ofGrams(0)));
            LoadChange.of(homestead, season, change).words().forEach(out::println);
        }
        return Commands.DONE;
    }
}
