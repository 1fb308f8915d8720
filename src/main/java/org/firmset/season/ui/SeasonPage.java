package org.firmset.season.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import java.util.Optional;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.ui.HomesteadPages;
import org.firmset.season.SeasonState;
import org.firmset.season.Seasons;
import org.firmset.season.result.SeasonReport;
import org.jspecify.annotations.Nullable;

/** A page that shows the plan of the opened homestead and follows it. */
abstract class SeasonPage extends Div implements BeforeEnterObserver {
    private final Homesteads homesteads;
    private final Seasons seasons;
    private @Nullable SeasonReport shown;

    SeasonPage(Homesteads homesteads, Seasons seasons) {
        this.homesteads = homesteads;
        this.seasons = seasons;
    }

    Seasons seasons() {
        return seasons;
    }

    Optional<UUID> opened() {
        return homesteads.opened();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (homesteads.opened().isEmpty()) {
            event.forwardTo(HomesteadPages.START);
        }
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        homesteads.opened().ifPresent(id -> Listener.follow(attached, this, seasons, id, this::show));
    }

    /** Shows the plan again, because another part of it is asked for or something beside it changed. */
    void showAgain() {
        if (isAttached()) {
            homesteads.opened().map(seasons::state).ifPresent(this::showNow);
        }
    }

    /** To be told of the next plan even when it is the same. */
    void showAnewWhenPlanned() {
        shown = null;
    }

    private void show(SeasonState state) {
        if (state instanceof SeasonState.Planning && getChildren().findAny().isPresent()) {
            return; // what is there stays until the new plan has come
        }
        SeasonReport report = state.report();
        boolean same = report != null
                && report.equals(shown)
                && getChildren().findAny().isPresent();
        if (same && state.isLooking()) {
            return; // only the look has gone on; what is being read stays
        }
        showNow(state);
    }

    private void showNow(SeasonState state) {
        Optional<Homestead> homestead =
                homesteads.opened().flatMap(homesteads::find).map(Kept::homestead);
        SeasonReport report = state.report();
        shown = report;
        clear();
        if (homestead.isEmpty() || report == null) {
            removeAll();
            add(new Paragraph(
                    state instanceof SeasonState.Planning
                            ? "The first plan is being made."
                            : "There is no plan yet. The line above says why."));
            return;
        }
        show(homestead.get(), report);
    }

    /** Makes room for the plan to be shown anew. A page that keeps what is typed into it leaves more standing. */
    void clear() {
        removeAll();
    }

    /** Shows the plan; the page is as {@link #clear} left it. */
    abstract void show(Homestead homestead, SeasonReport report);
}
