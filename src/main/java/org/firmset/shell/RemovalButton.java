package org.firmset.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;

/**
 * Removes what nothing brings back, at the second press: the first one only asks. Leaving the button takes the question
 * away.
 */
public final class RemovalButton extends Button {
    private static final String QUESTION = "Press again: nothing brings it back";

    private boolean asked;

    public RemovalButton(String words, Runnable removal) {
        super(words);
        addThemeVariants(ButtonVariant.TERTIARY);
        addClickListener(e -> {
            if (asked) {
                removal.run();
            } else {
                asked = true;
                setText(QUESTION);
            }
        });
        addBlurListener(e -> {
            asked = false;
            setText(words);
        });
    }
}
