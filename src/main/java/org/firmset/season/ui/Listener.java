package org.firmset.season.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import java.util.UUID;
import java.util.function.Consumer;
import org.firmset.season.SeasonState;
import org.firmset.season.Seasons;

/** Lets a component follow the plan of a homestead for as long as it is on screen. */
final class Listener {
    private Listener() {}

    /** Shows the state at once and again whenever it changes, on the thread of the page. */
    static void follow(
            AttachEvent attached, Component component, Seasons seasons, UUID homestead, Consumer<SeasonState> show) {
        UI ui = attached.getUI();
        Seasons.Listening listening = seasons.listen(homestead, state -> ui.access(() -> show.accept(state)));
        component.addDetachListener(e -> {
            e.unregisterListener();
            listening.end();
        });
        show.accept(seasons.state(homestead));
    }
}
