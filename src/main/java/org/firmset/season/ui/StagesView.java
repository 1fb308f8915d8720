package org.firmset.season.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.Tool;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.takeoff.Needs;
import org.firmset.homestead.ui.HomesteadPages;
import org.firmset.measure.UnitSystem;
import org.firmset.measure.Units;
import org.firmset.season.Seasons;
import org.firmset.season.ask.Question;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.shell.Frame;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Show;

/** The stages by subproject; of one stage what it needs, its waits, and why it lies where it does. */
@Route(value = "stages/:stage?", layout = Frame.class)
@PageTitle("Firmset: stages")
class StagesView extends SeasonPage {
    private static final double MUCH_MORE = 1.05;
    private static final String STAGES = "stages";
    private static final String WAITS = "waits";
    private static final String SUBPROJECTS = "subprojects";

    private Optional<String> chosen = Optional.empty();

    StagesView(Homesteads homesteads, Seasons seasons) {
        super(homesteads, seasons);
        addClassName("fs-stages");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        super.beforeEnter(event);
        chosen = event.getRouteParameters().get("stage");
        // the same page serves the list and each stage, so going from one to the other does not attach it anew
        showAgain();
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        if (chosen.isPresent()) {
            Stage stage = homestead.stages().stream()
                    .filter(s -> s.key().equals(chosen.get()))
                    .findFirst()
                    .orElseThrow(() -> new NotFoundException("There is no stage '" + chosen.get() + "'"));
            stage(homestead, report, stage);
        } else {
            all(homestead, report);
        }
    }

    private void all(Homestead homestead, SeasonReport report) {
        add(new H1("Stages"));
        Div adding = new Div(
                new Anchor(HomesteadPages.add(STAGES), "Add a stage"),
                new Anchor(HomesteadPages.add(WAITS), "Add a wait"),
                new Anchor(HomesteadPages.add(SUBPROJECTS), "Add a subproject"));
        adding.addClassName("fs-buttons");
        add(adding);
        homestead.subprojects().forEach(p -> add(subproject(homestead, report, p)));
    }

    private static Section subproject(Homestead homestead, SeasonReport report, Subproject subproject) {
        Section section =
                new Section(new H2(new Anchor(HomesteadPages.edit(SUBPROJECTS, subproject.key()), subproject.name())));
        List<SeasonReport.StagePart> planned = homestead.stages().stream()
                .filter(s -> s.subproject().equals(subproject.key()))
                .flatMap(s -> report.stage(s.key()).stream())
                .sorted(Comparator.comparing(SeasonReport.StagePart::start))
                .toList();
        OrderedList list = new OrderedList();
        list.addClassName("fs-stage-list");
        planned.forEach(s -> list.add(line(s)));
        section.add(list);
        List<Stage> unplanned = homestead.stages().stream()
                .filter(s -> s.subproject().equals(subproject.key())
                        && report.stage(s.key()).isEmpty())
                .toList();
        if (!unplanned.isEmpty()) {
            section.add(new Paragraph("Not in the plan yet: "
                    + unplanned.stream().map(Stage::name).collect(Collectors.joining(", ")) + "."));
        }
        return section;
    }

    private static ListItem line(SeasonReport.StagePart stage) {
        Span date = new Span(Dates.day(stage.start()));
        date.addClassName("fs-stage-date");
        Anchor name = new Anchor(STAGES + "/" + stage.key(), stage.name());
        Span slack = new Span(BoardWriter.slack(stage) + (stage.critical() ? ", on the critical path" : ""));
        slack.addClassName("fs-stage-slack");
        ListItem item = new ListItem(date, name, slack);
        item.addClassName(stage.critical() ? "fs-critical" : "fs-plain");
        return item;
    }

    private void stage(Homestead homestead, SeasonReport report, Stage stage) {
        add(new Anchor(STAGES, "All stages"), new H1(stage.name()));
        Div changing = new Div(
                new Anchor(HomesteadPages.edit(STAGES, stage.key()), "Change this stage"),
                new Anchor(HomesteadPages.add(WAITS), "Add a wait"));
        changing.addClassName("fs-buttons");
        add(changing);
        report.stage(stage.key()).ifPresent(part -> {
            Section why = whyThen(part);
            opened().ifPresent(id ->
                    why.add(new AskPanel(seasons(), id, "What would let it move?", new Question.Start(part.key()))));
            add(why);
        });
        Div blocks = new Div(needs(homestead, stage), waits(homestead, report, stage), facts(homestead, stage));
        blocks.addClassName("fs-sheet");
        if (!stage.hazards().isEmpty()) {
            blocks.add(cautions(stage));
        }
        add(blocks);
    }

    private static Section whyThen(SeasonReport.StagePart part) {
        String when = part.start().equals(part.finish())
                ? "On " + Dates.date(part.start())
                : "From " + Dates.day(part.start()) + " to " + Dates.date(part.finish());
        Section section = new Section(
                new H2("Why then and not sooner?"),
                new Paragraph(when + ", " + BoardWriter.slack(part) + (part.critical() ? ", on the critical path" : "")
                        + "."),
                new Paragraph(part.whyNotSooner()));
        section.addClassName("fs-why");
        return section;
    }

    private static Section block(String title) {
        Section section = new Section(new H2(title));
        section.addClassName("fs-block");
        return section;
    }

    private static Section needs(Homestead homestead, Stage stage) {
        Section section = block("What it needs");
        Map<String, Material> materials =
                homestead.materials().stream().collect(Collectors.toMap(Material::key, Function.identity()));
        Map<String, String> tools = homestead.tools().stream().collect(Collectors.toMap(Tool::key, Tool::name));
        UnorderedList list = new UnorderedList();
        list.add(new ListItem(stage.labour() + " of labour, at least "
                + (stage.crew() == 1 ? "one person" : stage.crew() + " people")));
        Needs.reckoned(homestead).stages().stream()
                .filter(s -> s.key().equals(stage.key()))
                .flatMap(s -> s.needs().stream())
                .forEach(n -> Optional.ofNullable(materials.get(n.material()))
                        .ifPresent(m -> list.add(new ListItem("%d × %s (%s of %s)"
                                .formatted(n.packs(), m.name(), m.pack(), Units.show(m.mass(), homestead.units()))))));
        if (!stage.tools().isEmpty()) {
            list.add(new ListItem("Tools: "
                    + stage.tools().stream().map(t -> tools.getOrDefault(t, t)).collect(Collectors.joining(", "))));
        }
        section.add(list);
        List<Takeoff> takeoffs = homestead.takeoffs().stream()
                .filter(t -> stage.key().equals(t.stage()))
                .toList();
        if (!takeoffs.isEmpty()) {
            UnorderedList worked = new UnorderedList();
            takeoffs.forEach(t -> worked.add(takeoff(t)));
            section.add(new H3("Worked out from dimensions"), worked);
            labourDiffers(stage, takeoffs).ifPresent(section::add);
        }
        return section;
    }

    /** Materials follow from dimensions by themselves, labour is for its owners to set: say where the two part. */
    private static Optional<Paragraph> labourDiffers(Stage stage, List<Takeoff> takeoffs) {
        double reckoned = takeoffs.stream()
                .flatMap(t -> Needs.worksheet(t).stream())
                .flatMap(w -> w.lines(Line.Role.LABOUR).stream())
                .mapToDouble(l -> l.amount() instanceof Amount.Number hours ? hours.value() : 0)
                .sum();
        double set = stage.labour().quarters() / 4.0;
        if (reckoned <= set * MUCH_MORE) {
            return Optional.empty();
        }
        Paragraph look =
                new Paragraph("Look: the takeoffs reckon with " + Show.amount(Amount.hours(reckoned), UnitSystem.METRIC)
                        + " of labour, the stage has " + stage.labour() + ". Change the stage if you agree.");
        look.addClassName("fs-warning");
        return Optional.of(look);
    }

    private static ListItem takeoff(Takeoff takeoff) {
        String labour = Needs.worksheet(takeoff).stream()
                .flatMap(w -> w.lines(Line.Role.LABOUR).stream())
                .map(l -> ", reckons with " + Show.amount(l.amount(), UnitSystem.METRIC) + " of labour")
                .findFirst()
                .orElse("");
        return new ListItem(new Anchor(HomesteadPages.takeoff(takeoff), takeoff.name()), new Span(labour));
    }

    private static Section waits(Homestead homestead, SeasonReport report, Stage stage) {
        Section section = block("Its waits");
        Map<String, String> names = homestead.stages().stream().collect(Collectors.toMap(Stage::key, Stage::name));
        UnorderedList before = new UnorderedList();
        UnorderedList after = new UnorderedList();
        for (SeasonReport.WaitPart wait : report.waits()) {
            if (wait.to().equals(stage.key())) {
                before.add(wait(wait, names.getOrDefault(wait.from(), wait.from())));
            } else if (wait.from().equals(stage.key())) {
                after.add(wait(wait, names.getOrDefault(wait.to(), wait.to())));
            }
        }
        section.add(new H3("Before it"), before, new H3("After it"), after);
        return section;
    }

    private static ListItem wait(SeasonReport.WaitPart wait, String other) {
        String text = wait.ready().equals(wait.begins())
                ? other + ", " + Dates.day(wait.begins())
                : "%s, %s to %s".formatted(other, Dates.day(wait.begins()), Dates.day(wait.ready()));
        return new ListItem(new Span(text + ": "), new Anchor(HomesteadPages.edit(WAITS, wait.key()), wait.name()));
    }

    private static Section facts(Homestead homestead, Stage stage) {
        Section section = block("How it can be done");
        UnorderedList list = new UnorderedList();
        for (Part part : Part.of(Stage.class)) {
            boolean shown = List.of(
                            "layout", "leastBlock", "mostPerDay", "energyPerHour", "notBefore", "notAfter", "note")
                    .contains(part.name());
            Object value = shown ? part.valueIn(stage) : null;
            if (value != null) {
                list.add(new ListItem(part.label() + ": " + Part.shown(value, homestead.units())));
            }
        }
        section.add(list);
        return section;
    }

    private static Section cautions(Stage stage) {
        Section section = block("Cautions");
        UnorderedList list = new UnorderedList();
        Cautions.of(stage.hazards()).forEach(c -> list.add(new ListItem(c)));
        Paragraph standing = new Paragraph(Cautions.STANDING);
        standing.addClassName("fs-standing");
        section.add(list, standing);
        return section;
    }
}
