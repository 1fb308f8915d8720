package org.firmset.homestead.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.firmset.homestead.file.Fault;

/** Says what was not accepted, and why. Empty until then. */
class FaultList extends Div {

    FaultList() {
        addClassName("fs-faults");
        getElement().setAttribute("role", "alert");
        setVisible(false);
    }

    void show(String message) {
        show(message, List.of());
    }

    void show(String message, List<Fault> faults) {
        removeAll();
        add(new Paragraph(message));
        UnorderedList list = new UnorderedList();
        faults.forEach(f -> list.add(new ListItem(f.line())));
        add(list);
        setVisible(true);
    }

    void clear() {
        removeAll();
        setVisible(false);
    }
}
