package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import java.util.Optional;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.ui.HomesteadPages;

/** A page about the money of the opened homestead. */
abstract class SpendPage extends Div implements BeforeEnterObserver {
    private final Homesteads homesteads;

    SpendPage(Homesteads homesteads) {
        this.homesteads = homesteads;
        addClassName("fs-spend");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        Optional<Kept> kept = homesteads.opened().flatMap(homesteads::find);
        if (kept.isEmpty()) {
            event.forwardTo(HomesteadPages.START);
            return;
        }
        removeAll();
        show(kept.get(), event);
    }

    /** Shows what the address asks for; the page is empty. */
    abstract void show(Kept kept, BeforeEnterEvent event);
}
