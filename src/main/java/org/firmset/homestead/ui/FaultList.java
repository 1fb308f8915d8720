package org.firmset.homestead.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.Fault;
import org.firmset.homestead.part.Part;

/** Says what was not accepted, and why. Empty until then. */
public class FaultList extends Div {

    public FaultList() {
        addClassName("fs-faults");
        getElement().setAttribute("role", "alert");
        setVisible(false);
    }

    public void show(String message) {
        show(message, List.of());
    }

    public void show(String message, List<Fault> faults) {
        removeAll();
        add(new Paragraph(message));
        UnorderedList list = new UnorderedList();
        faults.forEach(f -> list.add(new ListItem(f.line())));
        add(list);
        setVisible(true);
    }

    /** The same on a page, where things have names and not places in a file. */
    void show(String message, List<Fault> faults, Homestead changed) {
        removeAll();
        add(new Paragraph(message));
        UnorderedList list = new UnorderedList();
        faults.stream().map(f -> inWords(f, changed)).distinct().forEach(text -> list.add(new ListItem(text)));
        add(list);
        setVisible(true);
    }

    private static String inWords(Fault fault, Homestead changed) {
        String[] place = fault.pointer().split("/", -1);
        Optional<Part> part = place.length > 1 ? Lists.part(place[1]) : Optional.empty();
        if (part.isEmpty()) {
            return fault.line();
        }
        String thing = part.get().label();
        if (part.get().list() && place.length > 2) {
            List<Record> things = Lists.of(changed, part.get());
            thing += ", " + Lists.name(things.get(Integer.parseInt(place[2])), new Surroundings(changed));
        }
        boolean removed = fault.problem().endsWith("that is not there");
        return removed
                ? thing + " still uses '" + fault.value() + "'. Change or remove it first."
                : thing + ": " + (fault.value().isEmpty() ? "" : "'" + fault.value() + "' ") + fault.problem() + ". "
                        + fault.remedy() + ".";
    }

    public void clear() {
        removeAll();
        setVisible(false);
    }
}
