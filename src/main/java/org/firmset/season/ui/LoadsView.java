package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.firmset.homestead.Cautions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.season.Seasons;
import org.firmset.season.load.LoadWords;
import org.firmset.season.load.SupplyWords;
import org.firmset.season.load.TripLoads;
import org.firmset.season.load.TripLoadsWriter;
import org.firmset.season.result.PlannedHomestead;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;
import org.firmset.shell.Frame;

/** What a trip carries: each run with a place for every pack, the limits, what to buy where, and what is on site. */
@Route(value = "loads/:trip?", layout = Frame.class)
@PageTitle("Firmset: loads")
class LoadsView extends SeasonPage {
    private Optional<String> asked = Optional.empty();

    LoadsView(Homesteads homesteads, Seasons seasons) {
        super(homesteads, seasons);
        addClassName("fs-loads");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        super.beforeEnter(event);
        asked = event.getRouteParameters().get("trip");
        // going from trip to trip does not attach the page anew
        showAgain();
    }

    @Override
    void show(Homestead homestead, SeasonReport report) {
        Optional<PlannedHomestead> planned = opened().flatMap(seasons()::latest);
        if (planned.isEmpty()) {
            showAnewWhenPlanned();
            add(new H1("Loads"), new Paragraph("The plan is being made again; its loads are here in a moment."));
            return;
        }
        List<SeasonReport.TripPart> trips = planned.get().season().report().madeTrips();
        if (trips.isEmpty()) {
            add(new H1("Loads"), new Paragraph("No trip is planned, so there is nothing to load."));
            return;
        }
        trip(planned.get(), trips, chosen(planned.get().season().report(), trips));
    }

    /** The one that is asked for; otherwise the next one. A trip that a new plan has left out gives way to the next one. */
    private SeasonReport.TripPart chosen(SeasonReport report, List<SeasonReport.TripPart> trips) {
        boolean known =
                asked.isEmpty() || report.trips().stream().anyMatch(t -> t.key().equals(asked.get()));
        if (!known) {
            throw new NotFoundException("There is no trip '" + asked.get() + "'");
        }
        return trips.stream()
                .filter(t -> asked.isPresent()
                        ? t.key().compareTo(asked.get()) >= 0
                        : !t.lastDate().isBefore(report.statusDate()))
                .findFirst()
                .orElse(trips.getFirst());
    }

    private void trip(PlannedHomestead planned, List<SeasonReport.TripPart> trips, SeasonReport.TripPart trip) {
        TripLoads loads = TripLoadsWriter.of(planned.homestead(), planned.season(), trip.key());
        LoadWords words = new LoadWords(planned.homestead().units());
        SupplyWords supplies = new SupplyWords(planned.homestead().units());
        add(new H1("Loads of trip %d, %s".formatted(trip.number(), Dates.span(trip.firstDate(), trip.lastDate()))));
        add(choice(trips, trip), new Paragraph(LoadWords.fewest(loads.fewest())));
        loads.own().forEach(run -> add(new OwnRunPanel(run, loads, words, supplies)));
        loads.brought().forEach(run -> add(new BroughtRunPanel(run, loads, words, supplies)));
        if (!loads.own().isEmpty()) {
            add(new DayChangePanel(planned, loads));
        }
        add(onSite(loads, supplies));
        if (!loads.water().isEmpty()) {
            add(WaterSection.of(loads.water()));
        }
        opened().ifPresent(id -> haulOrBring(id, planned, loads));
        add(cautions(loads));
    }

    private static Div choice(List<SeasonReport.TripPart> trips, SeasonReport.TripPart trip) {
        Div choice = new Div();
        choice.addClassNames("fs-trip-choice", "fs-no-print");
        int place = trips.indexOf(trip);
        if (place > 0) {
            choice.add(new Anchor(SeasonPages.loads(trips.get(place - 1).key()), "Earlier trip"));
        }
        Select<SeasonReport.TripPart> select = new Select<>();
        select.setLabel("Trip");
        select.setItems(trips);
        select.setItemLabelGenerator(t -> "%d, %s".formatted(t.number(), Dates.span(t.firstDate(), t.lastDate())));
        select.setValue(trip);
        select.addValueChangeListener(
                e -> UI.getCurrent().navigate(SeasonPages.loads(e.getValue().key())));
        choice.add(select);
        if (place < trips.size() - 1) {
            choice.add(new Anchor(SeasonPages.loads(trips.get(place + 1).key()), "Later trip"));
        }
        return choice;
    }

    private static Section section(String title, Component... content) {
        Section section = new Section(new H2(title));
        section.add(content);
        section.addClassName("fs-block");
        return section;
    }

    private static Section onSite(TripLoads loads, SupplyWords supplies) {
        Section section = section("On site before and after", new TablePanel(SupplyWords.stock(loads)));
        supplies.dryRoom(loads).map(Paragraph::new).ifPresent(section::add);
        return section;
    }

    private void haulOrBring(UUID id, PlannedHomestead planned, TripLoads loads) {
        HaulOrBringPanel panel = new HaulOrBringPanel(seasons(), id, planned.season(), loads);
        if (panel.hasWords()) {
            add(panel);
        }
    }

    private static Section cautions(TripLoads loads) {
        UnorderedList list = new UnorderedList();
        loads.own().stream()
                .flatMap(r -> r.placement().cautions().stream())
                .distinct()
                .forEach(c -> list.add(new ListItem(c)));
        Paragraph standing = new Paragraph(Cautions.STANDING);
        standing.addClassName("fs-standing");
        return section("Cautions", list, standing);
    }
}
