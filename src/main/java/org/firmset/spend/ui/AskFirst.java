package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Lets the first press of a button only ask. The next one goes on, unless what was asked about has changed in between; the
 * buttons say so.
 */
final class AskFirst {
    private final Map<Button, String> asked = new LinkedHashMap<>();
    private final Map<Button, String> usual = new LinkedHashMap<>();
    private @Nullable Object now;
    private boolean agreed;

    /** @param words what the button says for the second press */
    void on(Button button, String words) {
        usual.put(button, button.getText());
        asked.put(button, words);
    }

    /**
     * Follows what is asked about.
     *
     * @param about equal as long as it is the same; null for nothing
     * @return whether it is another than before
     */
    boolean look(@Nullable Object about) {
        if (Objects.equals(about, now)) {
            return false;
        }
        now = about;
        agreed = false;
        usual.forEach(Button::setText);
        return true;
    }

    /** Whether this press only asks. */
    boolean asks() {
        boolean asks = !agreed;
        if (asks) {
            agreed = true;
            asked.forEach(Button::setText);
        }
        return asks;
    }
}
