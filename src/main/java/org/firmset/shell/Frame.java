package org.firmset.shell;

import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.HighlightConditions;
import com.vaadin.flow.router.RouterLayout;
import com.vaadin.flow.router.RouterLink;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The frame around a page: the name, the way to the other pages, notes, the page. */
public class Frame extends Div implements RouterLayout {
    private static final String MAIN_ID = "page";

    private final Main main = new Main();

    Frame(List<Destination> destinations, List<FrameNote> notes) {
        addClassName("fs-frame");
        Anchor skip = new Anchor("#" + MAIN_ID, "To the page itself");
        skip.addClassName("fs-skip");
        Span name = new Span("Firmset");
        name.addClassName("fs-name");
        Nav nav = new Nav();
        nav.setAriaLabel("Pages");
        destinations.stream()
                .sorted(Comparator.comparingInt(Destination::order))
                .map(Frame::link)
                .forEach(nav::add);
        Header header = new Header(name, nav);
        header.addClassName("fs-header");
        main.setId(MAIN_ID);
        main.addClassName("fs-page");
        add(skip, header);
        notes.forEach(n -> add(n.make()));
        add(main);
    }

    private static RouterLink link(Destination destination) {
        RouterLink link = new RouterLink(destination.name(), destination.view());
        link.setHighlightCondition(HighlightConditions.sameLocation());
        link.setHighlightAction((here, highlighted) -> {
            if (highlighted) {
                here.getElement().setAttribute("aria-current", "page");
            } else {
                here.getElement().removeAttribute("aria-current");
            }
        });
        return link;
    }

    @Override
    public void showRouterLayoutContent(@Nullable HasElement content) {
        main.getElement().removeAllChildren();
        if (content != null) {
            main.getElement().appendChild(content.getElement());
        }
    }

    @Override
    public void removeRouterLayoutContent(@Nullable HasElement oldContent) {
        main.getElement().removeAllChildren();
    }
}
