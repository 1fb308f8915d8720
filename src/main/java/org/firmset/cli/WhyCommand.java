package org.firmset.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Reading;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Effort;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.ask.Answers;
import org.firmset.season.ask.Compared;
import org.firmset.season.ask.Comparing;
import org.firmset.season.ask.MorePower;
import org.firmset.season.ask.MorePowerFinder;
import org.firmset.season.ask.MorePowerWords;
import org.firmset.season.ask.Question;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.WordTable;

/** firmset why FILE ...: answers a question about the plan of a homestead file by planning it again. */
final class WhyCommand {
    private static final Effort EFFORT = Effort.THOROUGH;

    private final PrintStream out;
    private final PlanCommand plans;

    WhyCommand(PrintStream out, PrintStream err) {
        this.out = out;
        plans = new PlanCommand(out, err);
    }

    int run(List<String> arguments) {
        Options options = new Options(arguments, Set.of("style", "date"));
        List<String> words = options.words();
        if (words.size() < 2) {
            throw new NotUnderstood("name a homestead file and a question: finish SUBPROJECT, stage STAGE, trip"
                    + " YYYY-MM-DD, deliveries SUPPLIER, styles, power, or compare STYLE");
        }
        Path file = Path.of(words.getFirst());
        return switch (PlanCommand.read(file)) {
            case Reading.Refused refused -> plans.refuse(file, refused.faults());
            case Reading.Accepted accepted -> answer(accepted.homestead(), options, words.subList(1, words.size()));
        };
    }

    private int answer(Homestead homestead, Options options, List<String> words) {
        LocalDate today = options.value("date").map(PlanCommand::date).orElseGet(LocalDate::now);
        Style style = options.value("style").map(PlanCommand::style).orElse(Style.SOONEST);
        return switch (new SeasonPlanner().plan(homestead, today, style, EFFORT)) {
            case SeasonPlanner.Result.NoPlan noPlan -> plans.noPlan(noPlan.obstacles());
            case SeasonPlanner.Result.Planned planned ->
                switch (words.getFirst()) {
                    case "compare" -> compare(homestead, planned.season(), words.size() > 1 ? words.get(1) : "");
                    case "power" -> morePower(homestead, planned.season());
                    default -> answer(planned.season(), words);
                };
        };
    }

    private int morePower(Homestead homestead, PlannedSeason season) {
        MorePower answer = MorePowerFinder.find(homestead, season, new Stop());
        MorePowerWords.sentences(answer).forEach(out::println);
        if (answer instanceof MorePower.Limiting limiting) {
            WordTable table = MorePowerWords.table(limiting);
            if (!table.rows().isEmpty()) {
                out.print("\n" + TablePrinter.text(table) + "\n");
            }
            MorePowerWords.notes(limiting).forEach(out::println);
        }
        return Commands.DONE;
    }

    private int compare(Homestead homestead, PlannedSeason season, String word) {
        Style style = PlanCommand.style(word);
        if (style == season.report().style()) {
            throw new NotUnderstood("'" + word + "' is the style of the plan itself; name another after compare");
        }
        switch (Comparing.withStyle(homestead, season, style, List.of(), new Stop())) {
            case Compared.Nothing nothing -> out.println(nothing.why());
            case Compared.Plans plans -> new SideBySidePrinter(out).print(plans);
        }
        return Commands.DONE;
    }

    private int answer(PlannedSeason season, List<String> words) {
        Answers.to(question(season, words), season, Optional.empty(), new Stop())
                .forEach(out::println);
        return Commands.DONE;
    }

    private static Question question(PlannedSeason season, List<String> words) {
        SeasonReport report = season.report();
        List<DeliveryOffer> suppliers = season.problem().offers();
        String what = words.size() > 1 ? words.get(1) : "";
        return switch (words.getFirst()) {
            case "finish" ->
                new Question.Finish(
                        known(what, "subproject", report.subprojects().stream().map(SeasonReport.Part::key)));
            case "stage" ->
                new Question.Start(known(what, "stage", report.stages().stream().map(SeasonReport.StagePart::key)));
            case "trip" ->
                new Question.TripWorth(known(
                        what, "trip that is made", report.madeTrips().stream().map(SeasonReport.TripPart::key)));
            case "deliveries" ->
                new Question.Deliveries(
                        known(what, "supplier who delivers", suppliers.stream().map(DeliveryOffer::id)));
            case "styles" -> new Question.Styles();
            default ->
                throw new NotUnderstood("'" + words.getFirst()
                        + "' is no question; write finish SUBPROJECT, stage STAGE, trip YYYY-MM-DD, deliveries SUPPLIER,"
                        + " styles, power, or compare STYLE");
        };
    }

    private static String known(String key, String kind, Stream<String> keys) {
        List<String> all = keys.toList();
        if (all.stream().noneMatch(Predicate.isEqual(key))) {
            throw new NotUnderstood("'" + key + "' is no " + kind + "; there are " + String.join(", ", all));
        }
        return key;
    }
}
