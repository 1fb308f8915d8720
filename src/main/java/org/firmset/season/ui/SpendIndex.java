package org.firmset.season.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Nav;
import java.util.List;
import java.util.Locale;
import org.firmset.spend.ui.SpendPages;

/** Leads to the sections of the page of money, which on a phone is many screens long. */
final class SpendIndex extends Nav {
    static final String STAGES = "Stage by stage";
    static final String BUDGET = "Against the budget";
    static final String OVER_TIME = "The money over time";
    static final String CASH = "Cash before each trip";
    static final String AFFORD = "Can I afford it?";
    static final String PRICES = "Prices, tools and what lies on site";

    SpendIndex() {
        getElement().setAttribute("aria-label", "On this page");
        addClassNames("fs-buttons", "fs-no-print");
        for (String title : List.of(STAGES, BUDGET, OVER_TIME, CASH, AFFORD, PRICES)) {
            Anchor link = new Anchor(SpendPages.OVERVIEW + "#" + id(title), title);
            // the browser goes there by itself: it is the same page
            link.getElement().setAttribute("router-ignore", true);
            add(link);
        }
    }

    /** "Can I afford it?" is found at "can-i-afford-it". */
    static String id(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("\\W+", "-").replaceAll("-$", "");
    }
}
