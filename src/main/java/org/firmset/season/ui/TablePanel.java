package org.firmset.season.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableBody;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeader;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firmset.season.WordTable;

/** A table of words that scrolls in its own frame; its title is told to those who cannot see what stands above it. */
final class TablePanel extends Div {
    /** Where a figure leads. */
    @FunctionalInterface
    interface Links {
        /** @param column from 0, the name of the row being the first */
        Optional<String> of(int row, int column);
    }

    TablePanel(WordTable table) {
        this(table, (row, column) -> Optional.empty());
    }

    TablePanel(WordTable table, Links links) {
        NativeTableHeader head = new NativeTableHeader(new NativeTableRow(
                table.headings().stream().map(TablePanel::columnHeading).toArray(Component[]::new)));
        NativeTableBody body = new NativeTableBody();
        for (int i = 0; i < table.rows().size(); i++) {
            body.add(row(table, i, links));
        }
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

    private static NativeTableRow row(WordTable table, int number, Links links) {
        List<String> cells = table.rows().get(number);
        NativeTableHeaderCell name = new NativeTableHeaderCell(cells.getFirst());
        name.getElement().setAttribute("scope", "row");
        NativeTableRow row = new NativeTableRow(name);
        for (int column = 1; column < cells.size(); column++) {
            row.add(cell(table, number, column, links));
        }
        return row;
    }

    /** A figure by itself says nothing to those who jump from link to link, so its link tells the whole. */
    private static NativeTableCell cell(WordTable table, int number, int column, Links links) {
        List<String> cells = table.rows().get(number);
        String text = cells.get(column);
        return links.of(number, column)
                .map(address -> {
                    Anchor link = new Anchor(address, text);
                    link.getElement()
                            .setAttribute(
                                    "aria-label",
                                    "%s, %s %s: its receipts"
                                            .formatted(
                                                    cells.getFirst(),
                                                    table.headings().get(column).toLowerCase(Locale.ROOT),
                                                    text));
                    return new NativeTableCell(link);
                })
                .orElseGet(() -> new NativeTableCell(text));
    }
}
