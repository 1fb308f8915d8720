package org.firmset.season.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.dom.Element;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** A table as somebody reads it off the page. */
record ShownTable(List<List<String>> rows) {
    static ShownTable of(NativeTable table) {
        return new ShownTable(all(table.getElement())
                .filter(e -> !e.isTextNode() && e.getTag().equals("tr"))
                .map(row -> row.getChildren().map(Element::getTextRecursively).toList())
                // not those that tell how a figure above was made
                .filter(row -> row.size() > 1)
                .toList());
    }

    private static Stream<Element> all(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(ShownTable::all));
    }

    List<String> row(String name) {
        return rows.stream().filter(r -> r.getFirst().equals(name)).findFirst().orElseThrow();
    }

    /** "$1,240.00" and "$12.40 over" as cents, "$12.40 under" with a minus; words without an amount are none. */
    static long cents(String cell) {
        String digits = cell.replaceAll("[^0-9.]", "");
        long cents =
                digits.isEmpty() ? 0 : new BigDecimal(digits).movePointRight(2).longValueExact();
        return cell.endsWith("under") ? -cents : cents;
    }
}
