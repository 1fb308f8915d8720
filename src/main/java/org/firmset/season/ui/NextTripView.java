package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
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
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Tool;
import org.firmset.homestead.store.Homesteads;
import org.firmset.measure.Cash;
import org.firmset.measure.Units;
import org.firmset.plan.RunKind;
import org.firmset.season.Seasons;
import org.firmset.season.report.TripCheck;
import org.firmset.season.report.TripChecks;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.shell.Frame;
import org.firmset.spend.ui.SpendPages;

/** The start page: everything about the next trip, in the order in which it is needed. */
@Route(value = "", layout = Frame.class)
@PageTitle("Firmset: next trip")
class NextTripView extends SeasonPage {

    NextTripView(Homesteads homesteads, Seasons seasons) {
        super(homesteads, seasons);
        addClassName("fs-next-trip");
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        Optional<SeasonReport.TripPart> next = report.madeTrips().stream()
                .filter(t -> !t.lastDate().isBefore(report.statusDate()))
                .findFirst();
        next.ifPresentOrElse(trip -> trip(homestead, report, trip), () -> nothing(homestead));
    }

    private void nothing(Homestead homestead) {
        add(new H1("No trip is planned"));
        boolean empty = homestead.stages().isEmpty();
        add(new Paragraph(
                empty
                        ? "There are no stages yet. Describe the first one, and its trip appears here."
                        : "All stages are finished. Add the next ones, and their trips appear here."));
        add(new Anchor("stages", "Go to the stages"));
    }

    private void trip(Homestead homestead, SeasonReport report, SeasonReport.TripPart trip) {
        H1 title = new H1("Trip " + trip.number() + ", " + Dates.span(trip.firstDate(), trip.lastDate()));
        Button print = new Button("Print", e -> UI.getCurrent().getPage().executeJs("window.print()"));
        print.addClassName("fs-no-print");
        Div sheet = new Div(
                ready(trip),
                goOrNot(TripChecks.of(homestead, trip)),
                work(trip),
                runs(homestead, trip),
                power(trip),
                water(trip),
                tools(homestead, trip),
                money(report, trip),
                cautions(trip));
        sheet.addClassName("fs-sheet");
        add(title, lead(homestead, report, trip), print, sheet);
    }

    private static Paragraph lead(Homestead homestead, SeasonReport report, SeasonReport.TripPart trip) {
        long days = ChronoUnit.DAYS.between(report.statusDate(), trip.firstDate());
        String when = days <= 0 ? "It is under way." : days == 1 ? "It is tomorrow." : "It is " + days + " days away.";
        int people = trip.days().stream()
                .mapToInt(SeasonReport.DayPart::people)
                .max()
                .orElse(0);
        return new Paragraph("%s %s to %s, %d %s. The drive is %s each way; the first day loses %s to it, the last %s."
                .formatted(
                        when,
                        Dates.date(trip.firstDate()),
                        Dates.date(trip.lastDate()),
                        people,
                        people == 1 ? "person" : "people",
                        Units.show(homestead.travel().distance(), homestead.units()),
                        homestead.travel().lostArriving(),
                        homestead.travel().lostLeaving()));
    }

    private static Section section(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.add(content);
        section.addClassName("fs-block");
        return section;
    }

    private static Section ready(SeasonReport.TripPart trip) {
        if (trip.ready().isEmpty()) {
            return section("What has cured", new Paragraph("No wait ends before or during this trip."));
        }
        UnorderedList list = new UnorderedList();
        trip.ready().forEach(r -> list.add(new ListItem(r)));
        return section("What has cured", list);
    }

    private static Section goOrNot(List<TripCheck> checks) {
        long open = checks.stream().filter(c -> !c.settled()).count();
        Paragraph verdict = new Paragraph(
                open == 0
                        ? "Go: nothing in the plan speaks against it."
                        : "Go, if these hold: " + open + " to look at.");
        verdict.addClassName("fs-verdict");
        UnorderedList list = new UnorderedList();
        list.addClassName("fs-checks");
        for (TripCheck check : checks) {
            Span mark = new Span(check.settled() ? "settled" : "look");
            mark.addClassName(check.settled() ? "fs-settled" : "fs-look");
            list.add(new ListItem(mark, new Span(check.text())));
        }
        return section("Go or no-go", verdict, list);
    }

    private static Section work(SeasonReport.TripPart trip) {
        Section section = section("The order of work");
        for (SeasonReport.DayPart day : trip.days()) {
            section.add(new H3("%s, %s of %s labour".formatted(Dates.day(day.date()), day.used(), day.usable())));
            if (day.work().isEmpty()) {
                section.add(new Paragraph("Nothing is planned."));
                continue;
            }
            OrderedList list = new OrderedList();
            day.work().forEach(w -> list.add(work(w)));
            section.add(list);
        }
        return section;
    }

    private static ListItem work(SeasonReport.WorkPart work) {
        String part = work.blocks() == 1
                ? ""
                : ", part " + work.block() + " of " + work.blocks() + (work.finishes() ? ", which finishes it" : "");
        Anchor name = new Anchor("stages/" + work.stage(), work.name());
        String odds = work.weatherPercent() == null
                ? ""
                : ", the weather is fit for it on " + work.weatherPercent() + " % of such dates";
        ListItem item = new ListItem(name, new Span(" (" + work.subproject() + "), " + work.labour() + part + odds));
        if (work.powerNote() != null) {
            Paragraph note = new Paragraph(work.powerNote());
            note.addClassName("fs-figure-note");
            item.add(note);
        }
        return item;
    }

    private static Section runs(Homestead homestead, SeasonReport.TripPart trip) {
        Section section = section("What to load");
        if (trip.runs().isEmpty()) {
            section.add(new Paragraph("Nothing is to be brought."));
        }
        for (SeasonReport.RunPart run : trip.runs()) {
            section.add(new H3(title(run)));
            section.add(new Paragraph("%s; %s used to %d %% (%s of %s)."
                    .formatted(
                            Units.show(run.mass(), homestead.units()),
                            run.nearestLimit(),
                            run.usedPercent(),
                            Units.show(run.limitUsed(), homestead.units()),
                            Units.show(run.limit(), homestead.units()))));
            UnorderedList list = new UnorderedList();
            list.addClassName("fs-ticks");
            run.loads()
                    .forEach(l -> list.add(new ListItem("%d × %s (%s), %s%s"
                            .formatted(
                                    l.packs(),
                                    l.name(),
                                    l.pack(),
                                    Units.show(l.mass(), homestead.units()),
                                    run.kind() == RunKind.DELIVERY ? "" : ", in " + l.place()))));
            section.add(list);
        }
        Paragraph where =
                new Paragraph(new Anchor(SeasonPages.loads(trip.key()), "Where each pack lies, and what to buy where"));
        where.addClassName("fs-no-print");
        section.add(where);
        return section;
    }

    private static String title(SeasonReport.RunPart run) {
        return switch (run.kind()) {
            case ARRIVAL -> "With you: " + run.carrier();
            case EXTRA -> "Extra run to the yard and back, " + Dates.day(run.date()) + ": " + run.carrier();
            case DELIVERY ->
                "Delivered on " + Dates.day(run.date()) + " by " + run.carrier() + "; somebody must be there";
        };
    }

    private static Section power(SeasonReport.TripPart trip) {
        if (trip.batteryLowPercent() == null) {
            return section("Power", new Paragraph("There is no power on site."));
        }
        UnorderedList list = new UnorderedList();
        for (SeasonReport.DayPart day : trip.days()) {
            String generator = day.generatorWattHours() == 0
                    ? ""
                    : ", of which the generator gives %,d Wh".formatted(day.generatorWattHours());
            list.add(new ListItem("%s: %,d Wh%s".formatted(Dates.day(day.date()), day.wattHours(), generator)));
        }
        return section(
                "Power",
                list,
                new Paragraph("Leave with the battery full; it goes down to %d %% of what may be used."
                        .formatted(trip.batteryLowPercent())));
    }

    private static Section water(SeasonReport.TripPart trip) {
        return trip.water().isEmpty()
                ? section("Water", new Paragraph("The stages of this trip name no water."))
                : WaterSection.of(trip.water());
    }

    private static Section tools(Homestead homestead, SeasonReport.TripPart trip) {
        Map<String, String> names = homestead.tools().stream().collect(Collectors.toMap(Tool::key, Tool::name));
        List<String> tools = trip.days().stream()
                .flatMap(d -> d.work().stream())
                .flatMap(w -> w.tools().stream())
                .distinct()
                .map(t -> names.getOrDefault(t, t))
                .toList();
        if (tools.isEmpty()) {
            return section("Tools", new Paragraph("The stages name no tools."));
        }
        UnorderedList list = new UnorderedList();
        list.addClassName("fs-ticks");
        tools.forEach(t -> list.add(new ListItem(t)));
        return section("Tools", list);
    }

    private static Section money(SeasonReport report, SeasonReport.TripPart trip) {
        String currency = report.costs().total().getCurrency().getCurrencyCode();
        Section section = section(
                "Money due",
                new Paragraph("%s for the trip itself, its extra runs and deliveries; what is loaded is paid besides."
                        .formatted(Cash.show(Cash.cents(trip.cost()), currency))));
        if (!trip.firstDate().isAfter(report.statusDate())) {
            Anchor home = new Anchor(SpendPages.TRIP, "Home again: write down what it cost");
            home.addClassName("fs-no-print");
            section.add(home);
        }
        return section;
    }

    private static Section cautions(SeasonReport.TripPart trip) {
        List<String> cautions = Cautions.of(trip.days().stream()
                .flatMap(d -> d.work().stream())
                .flatMap(w -> w.hazards().stream())
                .toList());
        UnorderedList list = new UnorderedList();
        cautions.forEach(c -> list.add(new ListItem(c)));
        Paragraph standing = new Paragraph(Cautions.STANDING);
        standing.addClassName("fs-standing");
        return section("Cautions", list, standing);
    }
}
