package org.firmset.season.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.UUID;
import org.firmset.season.Seasons;
import org.firmset.season.ask.Question;

/** A question that is answered by planning again, when it is asked: a button, then what came of it. */
final class AskPanel extends Div {
    private static final String BULLET = "• ";

    private final Seasons seasons;
    private final UUID homestead;
    private final Div answer = new Div();

    /** @param label the question as the button says it */
    AskPanel(Seasons seasons, UUID homestead, String label, Question question) {
        this.seasons = seasons;
        this.homestead = homestead;
        addClassNames("fs-ask", "fs-no-print");
        answer.addClassName("fs-answer");
        answer.getElement().setAttribute("role", "status");
        answer.getElement().setAttribute("aria-live", "polite");
        Button button = new Button(label, e -> ask(question));
        button.addThemeVariants(ButtonVariant.SMALL);
        // an answer about a plan that is replaced in a moment would be lost
        button.setEnabled(!seasons.state(homestead).isLooking());
        add(button, answer);
    }

    private void ask(Question question) {
        answer.removeAll();
        answer.add(new Paragraph("Planning it again to see ..."));
        UI ui = UI.getCurrent();
        seasons.ask(homestead, question, sentences -> Listener.tell(ui, () -> show(sentences)));
    }

    private void show(List<String> sentences) {
        answer.removeAll();
        UnorderedList list = new UnorderedList();
        for (String sentence : sentences) {
            if (sentence.startsWith(BULLET)) {
                list.add(new ListItem(sentence.substring(BULLET.length())));
            } else {
                addList(list);
                list = new UnorderedList();
                answer.add(new Paragraph(sentence));
            }
        }
        addList(list);
    }

    private void addList(UnorderedList list) {
        if (list.getChildren().findAny().isPresent()) {
            answer.add(list);
        }
    }
}
