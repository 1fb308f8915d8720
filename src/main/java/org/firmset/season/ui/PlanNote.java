package org.firmset.season.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.progressbar.ProgressBar;
import com.vaadin.flow.shared.Registration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.firmset.homestead.store.Homesteads;
import org.firmset.plan.Obstacle;
import org.firmset.season.SeasonState;
import org.firmset.season.Seasons;
import org.firmset.season.result.SeasonReport;
import org.firmset.season.words.Dates;

/** One line on every page: how the plan stands, and what the last change moved. */
class PlanNote extends Div {
    private final Homesteads homesteads;
    private final Seasons seasons;
    private Optional<UUID> followed = Optional.empty();
    private Seasons.Listening listening = () -> {};

    PlanNote(Homesteads homesteads, Seasons seasons) {
        this.homesteads = homesteads;
        this.seasons = seasons;
        addClassName("fs-plan-note");
        getElement().setAttribute("role", "status");
        getElement().setAttribute("aria-live", "polite");
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        follow(attached.getUI());
        // another homestead may have been opened on the way from page to page
        Registration navigated = attached.getUI().addAfterNavigationListener(e -> follow(attached.getUI()));
        addDetachListener(e -> {
            e.unregisterListener();
            navigated.remove();
            listening.end();
            followed = Optional.empty();
        });
    }

    private void follow(UI ui) {
        Optional<UUID> opened = homesteads.opened();
        if (opened.isEmpty()) {
            setVisible(false);
        } else if (!opened.equals(followed)) {
            listening.end();
            followed = opened;
            listening = Listener.follow(ui, seasons, opened.get(), this::show);
        }
    }

    private void show(SeasonState state) {
        removeAll();
        setVisible(true);
        switch (state) {
            case SeasonState.Planning planning -> planning(planning.percent());
            case SeasonState.Planned planned -> planned(planned);
            case SeasonState.NoPlan noPlan -> noPlan(noPlan.obstacles());
            case SeasonState.Failed failed -> warn(failed.message());
        }
    }

    private void planning(int percent) {
        ProgressBar bar = new ProgressBar(0, 100, percent);
        bar.getElement().setAttribute("aria-label", "Planning");
        add(new Span("Planning ..."), bar);
    }

    private void planned(SeasonState.Planned planned) {
        SeasonReport report = planned.report();
        String finish = report.finish() == null
                ? "Nothing is left to plan"
                : "All finished " + Dates.date(report.finish()) + " with " + trips(report.tripCount());
        add(new Span(finish + "."));
        if (!planned.last()) {
            looking(planned.percent());
        }
        List<String> moved = planned.moved();
        if (!moved.isEmpty()) {
            String heading =
                    moved.size() == 1 ? moved.getFirst() : moved.getFirst() + " And " + (moved.size() - 1) + " more.";
            add(new Details("Moved: " + heading, list(moved)));
        }
    }

    private void looking(int percent) {
        ProgressBar bar = new ProgressBar(0, 100, percent);
        bar.getElement().setAttribute("aria-label", "Looking for a better plan");
        Button stop = new Button("Stop looking", e -> opened().ifPresent(seasons::endLook));
        stop.addThemeVariants(ButtonVariant.SMALL);
        add(new Span("A better plan is still being looked for; questions can be asked afterwards."), bar, stop);
    }

    private Optional<UUID> opened() {
        return homesteads.opened();
    }

    private static String trips(int count) {
        return count == 1 ? "1 trip" : count + " trips";
    }

    private static UnorderedList list(List<String> sentences) {
        UnorderedList list = new UnorderedList();
        sentences.forEach(s -> list.add(new ListItem(s)));
        return list;
    }

    private void noPlan(List<Obstacle> obstacles) {
        warn("There is no plan for the place as it is now. What is shown is the plan from before.");
        add(list(obstacles.stream().map(Obstacle::message).toList()));
    }

    private void warn(String message) {
        Span warning = new Span(message);
        warning.addClassName("fs-warning");
        add(warning);
    }
}
