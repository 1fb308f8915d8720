package org.firmset.homestead.ui;

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
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.firmset.homestead.Cautions;
import org.firmset.measure.UnitSystem;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.CutBar;
import org.firmset.trade.trace.Finding;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Worksheet;

/** What a calculation comes to, what to heed, its drawings and tables, and how each figure came about. */
final class WorksheetPanel extends Div {
    private final UnitSystem units;

    WorksheetPanel(Worksheet worksheet, UnitSystem units) {
        this.units = units;
        addClassName("fs-worksheet");
        add(results(worksheet));
        add(findings(worksheet));
        worksheet.curves().forEach(c -> add(new Html(new CurveDrawing(c).svg())));
        if (!worksheet.cuts().isEmpty()) {
            add(cuts(worksheet.cuts()));
        }
        worksheet.tables().forEach(t -> add(table(t)));
        add(steps(worksheet));
    }

    private String shown(Amount amount) {
        return Show.amount(amount, units);
    }

    private Section results(Worksheet worksheet) {
        Section section = new Section(new H2("Result"));
        Div figures = new Div();
        figures.addClassName("fs-results");
        worksheet.lines().stream().filter(l -> l.role() != Line.Role.STEP).forEach(l -> {
            Span name = new Span(l.name());
            Span value = new Span(shown(l.amount()));
            value.addClassName("fs-result-value");
            figures.add(new Div(name, value));
        });
        section.add(figures);
        return section;
    }

    /** What is found, the weightiest first, and the cautions of all lines. */
    private static Component findings(Worksheet worksheet) {
        UnorderedList list = new UnorderedList();
        list.addClassName("fs-findings");
        for (Finding finding : worksheet.weightiestFirst()) {
            Span word = new Span(
                    switch (finding.weight()) {
                        case NOTE -> "Note";
                        case WARNING -> "Look";
                        case ENGINEER -> "Ask";
                    });
            word.addClassName(finding.weight() == Finding.Weight.NOTE ? "fs-settled" : "fs-look");
            list.add(new ListItem(word, new Span(" " + finding.text())));
        }
        for (String caution : worksheet.cautions()) {
            Span word = new Span("Caution");
            word.addClassName("fs-look");
            list.add(new ListItem(word, new Span(" " + caution)));
        }
        return list;
    }

    private Component cuts(List<CutBar> cuts) {
        Section section = new Section(new H2("How to cut"), new Html(new CutDrawing(cuts, units).svg()));
        UnorderedList list = new UnorderedList();
        for (CutBar bar : cuts) {
            List<String> pieces =
                    bar.pieces().stream().map(p -> shown(Amount.length(p))).toList();
            list.add(new ListItem(bar.times() + " × from " + shown(Amount.length(bar.stock())) + ": "
                    + String.join(" + ", pieces) + "; left over " + shown(Amount.length(bar.left()))));
        }
        section.add(list);
        return section;
    }

    private Component table(Table table) {
        NativeTableHeader head = new NativeTableHeader(new NativeTableRow(
                table.headings().stream().map(NativeTableHeaderCell::new).toArray(NativeTableHeaderCell[]::new)));
        NativeTableBody body = new NativeTableBody();
        for (List<Amount> row : table.rows()) {
            body.add(new NativeTableRow(
                    row.stream().map(a -> new NativeTableCell(shown(a))).toArray(NativeTableCell[]::new)));
        }
        NativeTable drawn = new NativeTable(head, body);
        Div scroller = new Div(drawn);
        scroller.addClassName("fs-table");
        scroller.getElement().setAttribute("tabindex", "0");
        scroller.getElement().setAttribute("role", "region");
        scroller.getElement().setAttribute("aria-label", table.title());
        return new Section(new H2(table.title()), scroller);
    }

    private Component steps(Worksheet worksheet) {
        OrderedList list = new OrderedList();
        list.addClassName("fs-steps");
        worksheet.lines().forEach(l -> list.add(step(l)));
        Details details = new Details("How each figure came about", list);
        details.setOpened(true);
        Paragraph standing = new Paragraph(Cautions.STANDING);
        standing.addClassName("fs-standing");
        return new Div(details, standing);
    }

    private ListItem step(Line line) {
        Span figure = new Span(line.name() + " = " + shown(line.amount()));
        figure.addClassName("fs-step-figure");
        ListItem item = new ListItem(figure);
        if (!line.formula().isEmpty()) {
            Span formula = new Span(line.formula());
            formula.addClassName("fs-formula");
            item.add(formula);
        }
        if (!line.terms().isEmpty()) {
            Span terms = new Span(Show.terms(line, units));
            terms.addClassName("fs-terms");
            item.add(terms);
        }
        Span source = new Span("Source: " + line.source().words());
        source.addClassName("fs-source");
        item.add(source);
        if (line.caution() != null) {
            Span heed = new Span("Caution: " + line.caution());
            heed.addClassName("fs-heed");
            item.add(heed);
        }
        return item;
    }
}
