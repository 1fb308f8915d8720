package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.html.Div;

/** Puts a drawing on a page, in a frame that scrolls where the page is narrower than the drawing. */
final class Drawn {
    private Drawn() {}

    static Component frame(String svg, String label) {
        Div frame = new Div(new Html(svg));
        frame.addClassName("fs-drawing-frame");
        frame.getElement().setAttribute("tabindex", "0");
        frame.getElement().setAttribute("role", "region");
        frame.getElement().setAttribute("aria-label", label);
        return frame;
    }
}
