package org.firmset.season.ui;

import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.measure.Cash;
import org.firmset.measure.Units;
import org.firmset.plan.Style;
import org.firmset.season.Seasons;
import org.firmset.season.ask.Question;
import org.firmset.season.result.Proof;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.season.words.StyleWords;
import org.firmset.shell.Frame;

/** The whole season: the board, and beside it the critical path in words. */
@Route(value = "season", layout = Frame.class)
@PageTitle("Firmset: season")
class SeasonView extends SeasonPage {
    private Optional<String> chosen = Optional.empty();

    SeasonView(Homesteads homesteads, Seasons seasons) {
        super(homesteads, seasons);
        addClassName("fs-season");
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        SeasonBoard board = new SeasonBoard(BoardWriter.write(report, homestead.units()));
        Div about = new Div();
        about.addClassName("fs-about-stage");
        about.getElement().setAttribute("aria-live", "polite");
        board.addStageChosenListener(e -> {
            chosen = Optional.of(e.stage());
            board.choose(e.stage());
            aboutStage(about, report);
        });
        board.addTripChosenListener(e -> report.trips().stream()
                .filter(t -> t.key().equals(e.trip()))
                .findFirst()
                .ifPresent(t -> aboutTrip(about, homestead, t)));
        chosen.ifPresent(board::choose);
        aboutStage(about, report);
        Div heading = new Div(new H1("Season"), styles());
        heading.addClassName("fs-heading");
        Paragraph proof = new Paragraph(Proof.of(report));
        proof.addClassName("fs-proof");
        add(heading, figures(report), proof);
        Proof.withoutSolver().map(Paragraph::new).ifPresent(this::add);
        opened().ifPresent(id -> add(
                new AskPanel(seasons(), id, "What would each style make of it?", new Question.Styles()),
                new AskPanel(seasons(), id, "Which change moved what?", new Question.Causes()),
                new Paragraph(new Anchor("season/compare", "Set two plans side by side"))));
        if (!report.withoutPrice().isEmpty()) {
            Paragraph free = new Paragraph("No price is known for " + String.join(", ", report.withoutPrice())
                    + ": counted as free. Write the price at a supplier on Place and kit.");
            free.addClassName("fs-warning");
            add(free);
        }
        add(board, about, story(report));
    }

    private RadioButtonGroup<Style> styles() {
        RadioButtonGroup<Style> group = new RadioButtonGroup<>("What matters most");
        group.setItems(Style.values());
        group.setItemLabelGenerator(StyleWords::of);
        opened().ifPresent(id -> {
            group.setValue(seasons().style(id));
            group.addValueChangeListener(e -> seasons().choose(id, e.getValue()));
        });
        return group;
    }

    private static Section figures(SeasonReport report) {
        Section section = new Section();
        section.addClassName("fs-figures");
        section.getElement().setAttribute("aria-label", "The plan in figures");
        for (SeasonReport.Part part : report.subprojects()) {
            if (part.finish() != null) {
                section.add(figure(part.name(), Dates.day(part.finish()), bound(part)));
            }
        }
        section.add(
                figure(
                        "Trips",
                        Integer.toString(report.tripCount()),
                        "no plan needs fewer than " + report.best().trips()),
                figure(
                        "Still to spend",
                        money(Cash.cents(report.costs().total()), report),
                        "no plan costs less than "
                                + money(Cash.cents(report.best().money()), report)));
        return section;
    }

    private static String bound(SeasonReport.Part part) {
        String target = part.target() == null ? "" : "hoped for " + Dates.day(part.target()) + "; ";
        return part.notSooner() == null ? "done" : target + "not possible before " + Dates.day(part.notSooner());
    }

    private static String money(long cents, SeasonReport report) {
        return Cash.show(cents, report.costs().total().getCurrency().getCurrencyCode());
    }

    private static Div figure(String name, String value, String note) {
        Div label = new Div(name);
        label.addClassName("fs-figure-name");
        Div number = new Div(value);
        number.addClassName("fs-figure-value");
        Div small = new Div(note);
        small.addClassName("fs-figure-note");
        Div figure = new Div(label, number, small);
        figure.addClassName("fs-figure");
        return figure;
    }

    private void aboutStage(Div about, SeasonReport report) {
        about.removeAll();
        Optional<SeasonReport.StagePart> stage = chosen.flatMap(report::stage);
        if (stage.isEmpty()) {
            about.add(new Paragraph("Choose a stage to read why it lies where it does."));
            return;
        }
        SeasonReport.StagePart part = stage.get();
        about.add(
                new H2(part.name()),
                new Paragraph("%s. %s"
                        .formatted(
                                part.start().equals(part.finish())
                                        ? Dates.date(part.start())
                                        : Dates.day(part.start()) + " to " + Dates.date(part.finish()),
                                sentence(BoardWriter.slack(part)))),
                new Paragraph("Why then and not sooner? " + part.whyNotSooner()));
        opened().ifPresent(id ->
                about.add(new AskPanel(seasons(), id, "What would let it move?", new Question.Start(part.key()))));
        about.add(new Anchor("stages/" + part.key(), "All about this stage"));
    }

    private void aboutTrip(Div about, Homestead homestead, SeasonReport.TripPart trip) {
        about.removeAll();
        String dates = Dates.span(trip.firstDate(), trip.lastDate());
        if (!trip.made()) {
            about.add(new H2("Open: " + dates), new Paragraph("The plan has no work for these dates."));
            return;
        }
        about.add(new H2("Trip " + trip.number() + ", " + dates));
        for (SeasonReport.DayPart day : trip.days()) {
            String work = day.work().isEmpty()
                    ? "nothing is planned"
                    : day.work().stream().map(w -> w.name() + " " + w.labour()).collect(Collectors.joining(", "));
            about.add(new Paragraph(Dates.day(day.date()) + ": " + work + "."));
        }
        for (SeasonReport.RunPart run : trip.runs()) {
            about.add(new Paragraph(run.carrier() + ", " + Units.show(run.mass(), homestead.units()) + ": "
                    + run.loads().stream()
                            .map(l -> l.packs() + " × " + l.name())
                            .collect(Collectors.joining(", "))
                    + "."));
        }
        about.add(new Paragraph("It costs "
                + Cash.show(Cash.cents(trip.cost()), trip.cost().getCurrency().getCurrencyCode())
                + " besides what is loaded."));
        about.add(new Paragraph(new Anchor(SeasonPages.loads(trip.key()), "The loads of this trip")));
        opened().ifPresent(id -> about.add(
                new AskPanel(seasons(), id, "What would be without this trip?", new Question.TripWorth(trip.key()))));
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }

    private Section story(SeasonReport report) {
        Section section = new Section(new H2("The critical path in words"));
        section.addClassName("fs-story");
        boolean first = true;
        for (SeasonReport.PathPart path : report.criticalPaths()) {
            OrderedList list = new OrderedList();
            List<String> story = path.story();
            story.forEach(s -> list.add(new ListItem(s)));
            Div told = new Div(list);
            opened().ifPresent(id -> told.add(new AskPanel(
                    seasons(),
                    id,
                    "What would have to change to finish sooner?",
                    new Question.Finish(path.subproject()))));
            Details details = new Details(name(report, path.subproject()), told);
            details.setOpened(first);
            section.add(details);
            first = false;
        }
        return section;
    }

    private static String name(SeasonReport report, String subproject) {
        return report.subprojects().stream()
                .filter(p -> p.key().equals(subproject))
                .map(SeasonReport.Part::name)
                .findFirst()
                .orElse(subproject);
    }
}
