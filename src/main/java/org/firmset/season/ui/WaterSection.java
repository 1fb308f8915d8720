package org.firmset.season.ui;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.firmset.homestead.Cautions;

/** What water a trip takes and where it comes from, with what to mind. */
final class WaterSection {
    private WaterSection() {}

    static Section of(List<String> words) {
        UnorderedList list = new UnorderedList();
        words.forEach(w -> list.add(new ListItem(w)));
        Paragraph caution = new Paragraph(Cautions.WATER);
        caution.addClassName("fs-standing");
        Section section = new Section(new H2("Water"), list, caution);
        section.addClassName("fs-block");
        return section;
    }
}
