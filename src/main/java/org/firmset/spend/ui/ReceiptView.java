package org.firmset.spend.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.KeyModifier;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.ui.FaultList;
import org.firmset.homestead.ui.OpenedPage;
import org.firmset.shell.Frame;
import org.firmset.shell.RemovalButton;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.store.Documents;
import org.firmset.spend.store.KeptDocument;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.store.ReceiptBook.Outcome;
import org.jspecify.annotations.Nullable;

/** One receipt: entered, changed, removed. */
@Route(value = SpendPages.RECEIPTS + "/:receipt", layout = Frame.class)
@PageTitle("Firmset: receipt")
class ReceiptView extends OpenedPage {
    private final ReceiptBook book;
    private final Documents documents;
    private final Clock clock;
    private final FaultList faults = new FaultList();

    ReceiptView(Homesteads homesteads, ReceiptBook book, Documents documents, Clock clock) {
        super(homesteads, "fs-spend");
        this.book = book;
        this.documents = documents;
        this.clock = clock;
    }

    /** What is on the page. */
    private record Sheet(
            UUID homestead, @Nullable KeptReceipt before, ReceiptForm form, DocumentFields papers, AlikeNote alike) {
        List<KeptDocument> papersBefore() {
            return before == null ? List.of() : before.documents();
        }

        Optional<Receipt> read() {
            return form.read(papers.named(papersBefore()));
        }
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        String asked = event.getRouteParameters().get("receipt").orElse(SpendPages.NEW);
        KeptReceipt before = asked.equals(SpendPages.NEW) ? null : found(kept.id(), asked);
        showForm(kept, before);
    }

    private KeptReceipt found(UUID homestead, String id) {
        try {
            return book.find(homestead, UUID.fromString(id))
                    .orElseThrow(() -> new NotFoundException("There is no such receipt"));
        } catch (IllegalArgumentException e) {
            throw new NotFoundException("There is no such receipt");
        }
    }

    private void showForm(Kept kept, @Nullable KeptReceipt before) {
        removeAll();
        faults.clear();
        List<KeptReceipt> all = book.all(kept.id());
        Entering entering = Entering.of(kept.homestead(), LocalDate.now(clock), all);
        ReceiptForm form = new ReceiptForm(entering, before == null ? null : before.receipt());
        DocumentFields papers = new DocumentFields(
                documents,
                before == null ? List.of() : before.documents(),
                before == null ? null : before.receipt().document());
        AlikeNote alike = new AlikeNote(all, before);
        form.onChange(() -> alike.look(form.likeness()));
        Sheet sheet = new Sheet(kept.id(), before, form, papers, alike);
        add(new H1(title(before)), new Anchor(SpendPages.RECEIPTS, "All receipts"), form);
        add(new H2("Photos and papers"), papers, faults, alike, buttons(kept, sheet));
        if (before == null) {
            form.begin();
        }
    }

    private static String title(@Nullable KeptReceipt before) {
        return before == null
                ? "Enter a receipt"
                : before.receipt().supplier() + ", "
                        + Months.date(before.receipt().date());
    }

    private Div buttons(Kept kept, Sheet sheet) {
        Button save = new Button("Save");
        save.addClickListener(e -> save(sheet, ReceiptView::leave));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        // what is being typed belongs to the receipt, too: leaving the field hands it over first
        save.addClickShortcut(Key.ENTER, KeyModifier.CONTROL).resetFocusOnActiveElement();
        sheet.alike().asksOn(save, "Save as well");
        Div buttons = new Div(save);
        if (sheet.before() == null) {
            Button next = new Button("Save and enter the next");
            next.addClickListener(e -> save(sheet, () -> {
                showForm(kept, null);
                addComponentAtIndex(1, saved());
            }));
            sheet.alike().asksOn(next, "Save as well and enter the next");
            buttons.add(next);
        } else {
            becoming(sheet, sheet.before().receipt().state()).forEach(buttons::add);
            buttons.add(removal(sheet.homestead(), sheet.before()));
        }
        buttons.add(new Button("Leave as it was", e -> leave()));
        Paragraph keys = new Paragraph("Ctrl+Enter saves, too.");
        keys.addClassNames("fs-figure-note", "fs-keys");
        buttons.add(keys);
        if (sheet.before() != null && sheet.before().receipt().state().isToCome()) {
            buttons.add(stock());
        }
        buttons.addClassName("fs-buttons");
        return buttons;
    }

    /**
     * One press for an order that was paid, with today as the day of its rest, and for what came. What is to come need not
     * be bought again; what is paid and here is taken to lie in stock or to be used.
     */
    private List<Button> becoming(Sheet sheet, ReceiptState now) {
        return switch (now) {
            case ORDERED ->
                List.of(
                        becoming(sheet, "Paid, and it is here", ReceiptState.PAID),
                        becoming(sheet, "Paid, still to come", ReceiptState.PAID_AHEAD));
            case PAID_AHEAD -> List.of(becoming(sheet, "It is here", ReceiptState.PAID));
            case PAID, RETURNED -> List.of();
        };
    }

    private Button becoming(Sheet sheet, String words, ReceiptState next) {
        return new Button(words, e -> {
            sheet.form().become(next);
            save(sheet, ReceiptView::leave);
        });
    }

    /** Packs that came are counted by the stock alone. */
    private static Paragraph stock() {
        Paragraph stock = new Paragraph("When it is here, write its packs under Place and kit, Stock, too."
                + " Else the plan buys them again.");
        stock.addClassName("fs-figure-note");
        return stock;
    }

    private static Paragraph saved() {
        Paragraph saved = new Paragraph("Saved. Here is the next one.");
        saved.getElement().setAttribute("role", "status");
        return saved;
    }

    private void save(Sheet sheet, Runnable after) {
        Optional<Receipt> receipt = sheet.read();
        if (receipt.isEmpty()) {
            faults.show("Some fields are not right yet; nothing was stored.");
            return;
        }
        faults.clear();
        if (sheet.alike().asks(receipt.get())) {
            return;
        }
        switch (store(sheet, receipt.get())) {
            case Outcome.Stored stored -> after.run();
            case Outcome.Refused refused ->
                faults.show(
                        "This does not add up; nothing was stored.",
                        refused.faults().stream().map(FaultWords::of).toList());
            case Outcome.Outdated outdated -> faults.show(outdated.message());
        }
    }

    private Outcome store(Sheet sheet, Receipt receipt) {
        KeptReceipt before = sheet.before();
        List<KeptDocument> papers = sheet.papers().attached();
        return before == null
                ? book.add(sheet.homestead(), receipt, papers)
                : book.change(sheet.homestead(), before.id(), before.version(), receipt, papers);
    }

    private Button removal(UUID homestead, KeptReceipt kept) {
        return new RemovalButton("Remove this receipt", () -> {
            if (book.remove(homestead, kept.id(), kept.version())) {
                leave();
            } else {
                faults.show(new Outcome.Outdated().message());
            }
        });
    }

    private static void leave() {
        UI.getCurrent().navigate(SpendPages.RECEIPTS);
    }
}
