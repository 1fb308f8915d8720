package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableBody;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeader;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import org.firmset.season.WordTable;

/** A table of words that scrolls in its own frame; its title is told to those who cannot see what stands above it. */
final class TablePanel extends Div {
    TablePanel(WordTable table) {
        NativeTableHeader head = new NativeTableHeader(new NativeTableRow(
                table.headings().stream().map(TablePanel::columnHeading).toArray(Component[]::new)));
        NativeTableBody body = new NativeTableBody();
        table.rows().forEach(row -> body.add(row(row)));
        add(new NativeTable(head, body));
        addClassName("fs-table");
        getElement().setAttribute("tabindex", "0");
        getElement().setAttribute("role", "region");
        getElement().setAttribute("aria-label", table.title());
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
