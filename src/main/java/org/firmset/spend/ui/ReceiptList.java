package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Selected;

/** Receipts by month, the latest first, each month with its sum. Of very many the latest first, the rest when asked for. */
final class ReceiptList extends Div {
    private static final int AT_ONCE = 200;

    private final List<ListedReceipt> listed;
    private final Bearers bearers;
    private final String currency;

    ReceiptList(List<ListedReceipt> listed, Bearers bearers, String currency) {
        this.listed = listed;
        this.bearers = bearers;
        this.currency = currency;
        show(AT_ONCE);
    }

    private void show(int most) {
        removeAll();
        if (listed.isEmpty()) {
            add(new Paragraph("No receipt is like that."));
        }
        Map<YearMonth, List<ListedReceipt>> months = listed.stream()
                .collect(Collectors.groupingBy(
                        l -> YearMonth.from(l.kept().receipt().date()), LinkedHashMap::new, Collectors.toList()));
        int shown = 0;
        for (Map.Entry<YearMonth, List<ListedReceipt>> month : months.entrySet()) {
            if (shown < most) {
                add(month(month.getKey(), month.getValue(), most - shown));
                shown += month.getValue().size();
            }
        }
        if (shown > most || most < listed.size()) {
            int rest = listed.size() - Math.min(most, listed.size());
            add(new Button("Show earlier ones, " + rest + " more", e -> show(most + AT_ONCE)));
        }
    }

    private Div month(YearMonth month, List<ListedReceipt> its, int most) {
        Selected sum = ListedReceipt.sum(its, currency);
        Span amount = new Span(Figures.show(sum.spent()));
        amount.addClassName("fs-ledger-sum");
        H2 title = new H2(new Span(Months.words(month)), amount);
        title.addClassName("fs-ledger-month");
        UnorderedList list = new UnorderedList();
        list.addClassName("fs-ledger");
        its.stream().limit(most).map(this::row).forEach(list::add);
        return new Div(title, list);
    }

    private ListItem row(ListedReceipt listed) {
        Receipt receipt = listed.kept().receipt();
        Anchor name = new Anchor(SpendPages.receipt(listed.kept().id()), receipt.supplier());
        Div what = new Div(name, told("fs-ledger-what", what(receipt.lines())));
        Div notes = new Div();
        notes.addClassName("fs-ledger-notes");
        notes(listed).forEach(n -> notes.add(new Span(n)));
        return new ListItem(
                told("fs-ledger-day", Months.day(receipt.date())),
                what,
                told("fs-ledger-for", who(receipt.lines())),
                notes,
                told("fs-ledger-amount", Figures.show(listed.part().spent())));
    }

    private static Span told(String className, String text) {
        Span span = new Span(text);
        span.addClassName(className);
        return span;
    }

    private static String what(List<ReceiptLine> lines) {
        String first = lines.getFirst().text();
        return lines.size() == 1 ? first : first + " and " + (lines.size() - 1) + " more";
    }

    private String who(List<ReceiptLine> lines) {
        List<String> names = lines.stream()
                .flatMap(l -> l.shares().stream())
                .map(Bearers.Bearer::of)
                .distinct()
                .map(bearers::words)
                .toList();
        boolean open = lines.stream().anyMatch(l -> l.shares().isEmpty());
        if (names.isEmpty()) {
            return "not said for what";
        }
        String more = names.size() > 2 ? " and " + (names.size() - 2) + " more" : "";
        return String.join("; ", names.subList(0, Math.min(2, names.size()))) + more + (open ? "; some not said" : "");
    }

    private static List<String> notes(ListedReceipt listed) {
        List<String> notes = new ArrayList<>();
        Receipt receipt = listed.kept().receipt();
        if (receipt.state() == ReceiptState.ORDERED) {
            notes.add("ordered, " + Figures.show(listed.part().committed()) + " to pay");
        }
        if (receipt.state() == ReceiptState.RETURNED) {
            notes.add("returned");
        }
        if (!listed.part().heldBack().isZero()) {
            notes.add("deposit " + Figures.show(listed.part().heldBack()));
        }
        int papers = listed.kept().documents().size();
        if (papers > 0) {
            notes.add(papers == 1 ? "1 photo or paper" : papers + " photos or papers");
        }
        return notes;
    }
}
