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
import org.firmset.season.words.WordTable;

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
        this(table, links, Optional.empty());
    }

    /** With figures that open to how they were made. @param unfolded the rows that are open, kept up to date */
    TablePanel(WordTable table, Links links, Making making, Unfolded unfolded) {
        this(table, links, Optional.of(new Opening(making, unfolded)));
    }

    private record Opening(Making making, Unfolded unfolded) {}

    private TablePanel(WordTable table, Links links, Optional<Opening> opening) {
        NativeTableHeader head = role(
                "rowgroup",
                new NativeTableHeader(role(
                        "row",
                        new NativeTableRow(table.headings().stream()
                                .map(TablePanel::columnHeading)
                                .toArray(Component[]::new)))));
        NativeTableBody body = role("rowgroup", new NativeTableBody());
        for (int i = 0; i < table.rows().size(); i++) {
            int number = i;
            Optional<MadeRow> made = opening.map(
                    o -> new MadeRow(o.making, number, table.headings().size(), o.unfolded));
            body.add(row(
                    table,
                    i,
                    (column, text) -> figure(table, number, column, links)
                            .or(() -> made.filter(m -> opens(opening, number, column))
                                    .map(m -> m.opener(text, says(table, number, column) + ": how it is made")))));
            made.ifPresent(body::add);
        }
        add(role("table", new NativeTable(head, body)));
        addClassName("fs-table");
        getElement().setAttribute("tabindex", "0");
        getElement().setAttribute("role", "region");
        getElement().setAttribute("aria-label", table.title());
    }

    private static boolean opens(Optional<Opening> opening, int row, int column) {
        return opening.filter(o -> o.making.opens(row, column)).isPresent();
    }

    private static Component columnHeading(String text) {
        NativeTableHeaderCell cell = new NativeTableHeaderCell(text);
        cell.getElement().setAttribute("scope", "col");
        return role("columnheader", cell);
    }

    /** Some browsers forget that a table is one when it is laid out as blocks. */
    private static <C extends Component> C role(String role, C component) {
        component.getElement().setAttribute("role", role);
        return component;
    }

    /** What stands for a figure, or for the name of a row, in place of its text, if anything does. */
    private interface Figures {
        Optional<Component> of(int column, String text);
    }

    private static NativeTableRow row(WordTable table, int number, Figures figures) {
        List<String> cells = table.rows().get(number);
        NativeTableHeaderCell name = figures.of(0, cells.getFirst())
                .map(NativeTableHeaderCell::new)
                .orElseGet(() -> new NativeTableHeaderCell(cells.getFirst()));
        name.getElement().setAttribute("scope", "row");
        NativeTableRow row = role("row", new NativeTableRow(role("rowheader", name)));
        row.getElement().getClassList().set("fs-part", isPart(table, number));
        row.getElement().getClassList().set("fs-goes-on", isPart(table, number + 1));
        for (int column = 1; column < cells.size(); column++) {
            String text = cells.get(column);
            NativeTableCell cell =
                    figures.of(column, text).map(NativeTableCell::new).orElseGet(() -> new NativeTableCell(text));
            // on a phone a row of sums becomes a block, where each figure needs its heading beside it
            cell.getElement().setAttribute("data-heading", table.headings().get(column));
            if (text.equals(WordTable.NONE) || text.isEmpty()) {
                cell.addClassName("fs-none");
            }
            row.add(role("cell", cell));
        }
        return row;
    }

    private static boolean isPart(WordTable table, int number) {
        return number < table.rows().size()
                && table.rows().get(number).getFirst().startsWith(WordTable.PART);
    }

    private static Optional<Component> figure(WordTable table, int number, int column, Links links) {
        return links.of(number, column).map(address -> {
            Anchor link = new Anchor(address, table.rows().get(number).get(column));
            link.getElement().setAttribute("aria-label", says(table, number, column) + ": its receipts");
            return link;
        });
    }

    /** A figure by itself says nothing to those who jump from link to link, so it is told whole. */
    private static String says(WordTable table, int number, int column) {
        return column == 0
                ? name(table, number)
                : "%s, %s %s"
                        .formatted(
                                name(table, number),
                                table.headings().get(column).toLowerCase(Locale.ROOT),
                                table.rows().get(number).get(column));
    }

    /** Of a part with the name of the row it belongs to. */
    private static String name(WordTable table, int number) {
        String name = table.rows().get(number).getFirst();
        if (!name.startsWith(WordTable.PART) || number == 0) {
            return name;
        }
        int whole = number - 1;
        while (whole > 0 && table.rows().get(whole).getFirst().startsWith(WordTable.PART)) {
            whole--;
        }
        return table.rows().get(whole).getFirst() + ", " + name.substring(WordTable.PART.length());
    }
}
