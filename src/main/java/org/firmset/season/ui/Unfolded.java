package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.details.Details;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Supplier;

/** What a reader has unfolded on a page, so that nothing folds up when its parts are made anew. */
final class Unfolded {
    private final Set<String> keys = new HashSet<>();

    boolean has(String key) {
        return keys.contains(key);
    }

    void keep(String key, boolean open) {
        if (open) {
            keys.add(key);
        } else {
            keys.remove(key);
        }
    }

    /**
     * Something to unfold; only what is unfolded is made and sent.
     *
     * @param key its own on the page
     */
    Details details(String key, String summary, Supplier<Component> content) {
        Details details = new Details(summary);
        details.addOpenedChangeListener(e -> {
            keep(key, e.isOpened());
            if (e.isOpened() && details.getContent().findAny().isEmpty()) {
                details.add(content.get());
            }
        });
        details.setOpened(has(key));
        return details;
    }
}
