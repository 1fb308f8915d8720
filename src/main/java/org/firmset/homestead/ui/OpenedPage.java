package org.firmset.homestead.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import java.util.Optional;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;

/** A page about the opened homestead; where none is, the page to begin on is shown instead. */
public abstract class OpenedPage extends Div implements BeforeEnterObserver {
    private final Homesteads homesteads;

    /** @param look name of its class in the style sheet */
    protected OpenedPage(Homesteads homesteads, String look) {
        this.homesteads = homesteads;
        addClassName(look);
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
    protected abstract void show(Kept kept, BeforeEnterEvent event);
}
