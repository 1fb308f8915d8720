package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Html;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableBody;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeader;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.firmset.season.Compared;
import org.firmset.season.SideBySide;
import org.firmset.season.SideBySideWords;

/** Two plans: the difference in a sentence, in tables and drawn. */
final class SideBySidePanel extends Div {

    SideBySidePanel(Compared.Plans compared) {
        addClassName("fs-side-by-side");
        SideBySide plans = compared.plans();
        SideBySideWords words = new SideBySideWords(plans);
        Paragraph price = new Paragraph(words.price());
        price.addClassName("fs-proof");
        add(price);
        for (SideBySideWords.Table table : words.tables()) {
            if (!table.rows().isEmpty()) {
                add(table(table));
            }
        }
        List<String> kept = words.kept();
        if (!kept.isEmpty()) {
            add(new Details(
                    kept.size() == 1 ? "1 stage did not move" : kept.size() + " stages did not move", list(kept)));
        }
        words.trips().forEach(t -> add(new Paragraph(t)));
        if (!plans.moved().isEmpty()) {
            add(drawn(plans));
        }
        if (!compared.notes().isEmpty()) {
            add(new Section(new H2("Why, and how sure"), list(compared.notes())));
        }
    }

    private static Component drawn(SideBySide plans) {
        Paragraph key =
                new Paragraph(("Above each line, outlined: where a stage lies in '%s'. Below it, filled: where it"
                                + " lies in '%s'. Ticks on the line are trips with work for the subproject. The numbers are"
                                + " those of the table.")
                        .formatted(plans.first().name(), plans.second().name()));
        Div frame = new Div(new Html(new MovesDrawing(plans).svg()));
        frame.addClassName("fs-drawing-frame");
        frame.getElement().setAttribute("tabindex", "0");
        return new Section(new H2("Where the stages lie"), key, frame);
    }

    private static UnorderedList list(List<String> sentences) {
        UnorderedList list = new UnorderedList();
        sentences.forEach(s -> list.add(new ListItem(s)));
        return list;
    }

    private static Component table(SideBySideWords.Table table) {
        NativeTableHeader head = new NativeTableHeader(new NativeTableRow(
                table.headings().stream().map(SideBySidePanel::columnHeading).toArray(Component[]::new)));
        NativeTableBody body = new NativeTableBody();
        table.rows().forEach(row -> body.add(row(row)));
        Div scroller = new Div(new NativeTable(head, body));
        scroller.addClassName("fs-table");
        scroller.getElement().setAttribute("tabindex", "0");
        scroller.getElement().setAttribute("role", "region");
        scroller.getElement().setAttribute("aria-label", table.title());
        return new Section(new H2(table.title()), scroller);
    }

    private static Component columnHeading(String text) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(text);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private static NativeTableRow row(List<String> cells) {
        NativeTableHeaderCell name = new NativeTableHeaderCell(cells.getFirst());
        name.getElement().setAttribute("scope", "row");
        NativeTableRow row = new NativeTableRow(name);
        cells.stream().skip(1).map(NativeTableCell::new).forEach(row::add);
        return row;
    }
}
