package org.firmset.season.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.server.Command;
import java.util.UUID;
import java.util.function.Consumer;
import org.firmset.season.SeasonState;
import org.firmset.season.Seasons;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Lets a component follow the plan of a homestead for as long as it is on screen. */
final class Listener {
    private static final Logger LOG = LoggerFactory.getLogger(Listener.class);

    private Listener() {}

    /** Shows the state at once and again whenever it changes, on the thread of the page. */
    static void follow(
            AttachEvent attached, Component component, Seasons seasons, UUID homestead, Consumer<SeasonState> show) {
        Seasons.Listening listening = follow(attached.getUI(), seasons, homestead, show);
        component.addDetachListener(e -> {
            e.unregisterListener();
            listening.end();
        });
    }

    /** The same until the listening is ended. */
    static Seasons.Listening follow(UI ui, Seasons seasons, UUID homestead, Consumer<SeasonState> show) {
        Seasons.Listening listening = seasons.listen(homestead, state -> tell(ui, () -> show.accept(state)));
        show.accept(seasons.state(homestead));
        return listening;
    }

    /** Does something on the thread of a page, unless the page was closed. */
    static void tell(UI ui, Command command) {
        try {
            ui.access(command);
        } catch (UIDetachedException e) {
            // the page was closed a moment ago; nobody is there to be told
            LOG.debug("A closed page was not told", e);
        }
    }
}
