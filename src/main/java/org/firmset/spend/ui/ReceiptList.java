package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Selected;
import org.firmset.spend.store.KeptReceipt;
import org.jspecify.annotations.Nullable;

/**
 * Receipts by month, the latest first, each month with its sum; the rest of an order stands where it was paid. Of very many the latest first, the rest when asked for;
 * only those that are shown are read whole.
 */
final class ReceiptList extends Div {
    private static final int AT_ONCE = 200;

    private final List<ListedReceipt> listed;
    private final Function<List<UUID>, List<KeptReceipt>> whole;
    private final Bearers bearers;
    private final Map<YearMonth, Selected> sums = new HashMap<>();
    private final Button more = new Button();
    private int shown;
    private @Nullable YearMonth lastMonth;
    private UnorderedList lastList = new UnorderedList();

    /** @param whole reads receipts by their ids */
    ReceiptList(List<ListedReceipt> listed, Function<List<UUID>, List<KeptReceipt>> whole, Bearers bearers) {
        this.listed = listed;
        this.whole = whole;
        this.bearers = bearers;
        listed.forEach(l -> sums.merge(l.month(), l.part(), Selected::plus));
        if (listed.isEmpty()) {
            add(new Paragraph("No receipt is like that."));
        }
        more.addClickListener(e -> showMore());
        showMore();
    }

    private void showMore() {
        List<ListedReceipt> next = listed.subList(shown, Math.min(listed.size(), shown + AT_ONCE));
        Map<UUID, KeptReceipt> read = whole
                .apply(next.stream().map(ListedReceipt::id).toList())
                .stream()
                .collect(Collectors.toMap(KeptReceipt::id, Function.identity()));
        for (ListedReceipt one : next) {
            KeptReceipt kept = read.get(one.id());
            // somebody may have removed it in between
            if (kept != null) {
                listOf(one.month()).add(row(one, kept));
            }
        }
        shown += next.size();
        remove(more);
        if (shown < listed.size()) {
            more.setText("Show earlier ones, " + (listed.size() - shown) + " more");
            add(more);
        }
    }

    private UnorderedList listOf(YearMonth month) {
        if (!month.equals(lastMonth)) {
            Selected sum = Objects.requireNonNull(sums.get(month));
            Span amount = new Span(Figures.show(sum.spent()));
            amount.addClassName("fs-ledger-sum");
            H2 title = new H2(new Span(Months.words(month)), amount);
            title.addClassName("fs-ledger-month");
            lastList = new UnorderedList();
            lastList.addClassName("fs-ledger");
            add(new Div(title, lastList));
            lastMonth = month;
        }
        return lastList;
    }

    private ListItem row(ListedReceipt listed, KeptReceipt kept) {
        Receipt receipt = kept.receipt();
        Anchor name = new Anchor(SpendPages.receipt(kept.id()), receipt.supplier());
        Div what = new Div(name, told("fs-ledger-what", what(receipt.lines())));
        Div notes = new Div();
        notes.addClassName("fs-ledger-notes");
        notes(listed, kept).forEach(n -> notes.add(new Span(n)));
        return new ListItem(
                told("fs-ledger-day", Months.day(listed.date())),
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
            return "not said yet";
        }
        String more = names.size() > 2 ? " and " + (names.size() - 2) + " more" : "";
        return String.join("; ", names.subList(0, Math.min(2, names.size())))
                + more
                + (open ? "; some not said yet" : "");
    }

    private static String on(@Nullable LocalDate day) {
        return day == null ? "" : " on " + Months.date(day);
    }

    private static String restPaid(ListedReceipt listed, Receipt receipt, LocalDate day) {
        if (listed.date().equals(day)) {
            return "ordered" + on(receipt.date()) + ", the rest paid";
        }
        return (receipt.deposit().isZero() ? "ordered, paid" : "paid down, the rest") + on(day);
    }

    private static List<String> notes(ListedReceipt listed, KeptReceipt kept) {
        Selected part = listed.part();
        List<String> notes = new ArrayList<>();
        if (kept.receipt().state() == ReceiptState.ORDERED) {
            notes.add("ordered, " + Figures.show(part.committed()) + " to pay"
                    + on(kept.receipt().restOn()));
        }
        kept.receipt().restPaidOn().ifPresent(day -> notes.add(restPaid(listed, kept.receipt(), day)));
        if (kept.receipt().state() == ReceiptState.PAID_AHEAD) {
            notes.add("still to come");
        }
        if (kept.receipt().state() == ReceiptState.RETURNED) {
            notes.add("returned");
        }
        if (part.heldBackCents() != 0) {
            notes.add("deposit " + Figures.show(part.heldBack()));
        }
        int papers = kept.documents().size();
        if (papers > 0) {
            notes.add(papers == 1 ? "1 photo or paper" : papers + " photos or papers");
        }
        return notes;
    }
}
