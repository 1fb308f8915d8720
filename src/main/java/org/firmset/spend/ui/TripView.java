package org.firmset.spend.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.KeyModifier;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.ui.FaultList;
import org.firmset.homestead.ui.OpenedPage;
import org.firmset.shell.Frame;
import org.firmset.spend.Receipt;
import org.firmset.spend.TripReceipt;
import org.firmset.spend.store.KeptReceipt;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.store.ReceiptBook.Outcome;

/** What a trip that was made has cost, written down in a minute as one receipt. */
@Route(value = SpendPages.TRIP, layout = Frame.class)
@PageTitle("Firmset: write down a trip")
class TripView extends OpenedPage {
    private final ReceiptBook book;
    private final Clock clock;
    private final FaultList faults = new FaultList();

    TripView(Homesteads homesteads, ReceiptBook book, Clock clock) {
        super(homesteads, "fs-spend");
        this.book = book;
        this.clock = clock;
    }

    /** What is on the page. */
    private record Sheet(UUID homestead, TripForm form, TwiceNote twice) {}

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        faults.clear();
        Homestead homestead = kept.homestead();
        List<KeptReceipt> all = book.all(kept.id());
        Bearers bearers = new Bearers(homestead);
        TripForm form = new TripForm(homestead, bearers, lastTrip(all), LocalDate.now(clock));
        TripOutcome outcome = new TripOutcome(bearers);
        Sheet sheet = new Sheet(kept.id(), form, new TwiceNote(all));
        Div buttons = buttons(sheet);
        Runnable follow = () -> {
            Optional<TripReceipt> trip = form.peek();
            outcome.show(trip, form.knowsTheDrive());
            sheet.twice().look(trip);
        };
        form.onChange(follow);
        follow.run();
        add(
                new H1("Write down a trip"),
                new Anchor(SpendPages.RECEIPTS, "All receipts"),
                new Paragraph("A trip that was made becomes one receipt and counts as spent from then on; the plan"
                        + " counts only trips that are still to be made."),
                form,
                outcome,
                faults,
                sheet.twice(),
                buttons);
    }

    private static Optional<Receipt> lastTrip(List<KeptReceipt> all) {
        return all.reversed().stream()
                .map(KeptReceipt::receipt)
                .filter(TripReceipt::is)
                .findFirst();
    }

    private Div buttons(Sheet sheet) {
        Button save = new Button("Save");
        save.addClickListener(e -> save(sheet));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        // what is being typed belongs to the trip, too: leaving the field hands it over first
        save.addClickShortcut(Key.ENTER, KeyModifier.CONTROL).resetFocusOnActiveElement();
        sheet.twice().asksOn(save, "Save as well");
        Paragraph keys = new Paragraph("Ctrl+Enter saves, too.");
        keys.addClassNames("fs-figure-note", "fs-keys");
        Div buttons = new Div(save, new Button("Leave without saving", e -> leave()), keys);
        buttons.addClassName("fs-buttons");
        return buttons;
    }

    private void save(Sheet sheet) {
        Optional<TripReceipt> trip = sheet.form().read();
        if (trip.isEmpty()) {
            faults.show("Some fields are not right yet; nothing was stored.");
            return;
        }
        faults.clear();
        if (sheet.twice().asks(trip.get())) {
            return;
        }
        Receipt receipt = trip.get().receipt();
        if (receipt.lines().isEmpty()) {
            faults.show("The trip costs nothing so far; write its drive, tolls or food. Nothing was stored.");
            return;
        }
        switch (book.add(sheet.homestead(), receipt, List.of())) {
            case Outcome.Stored stored -> leave();
            case Outcome.Refused refused ->
                faults.show(
                        "This does not add up; nothing was stored.",
                        refused.faults().stream().map(FaultWords::of).toList());
            case Outcome.Outdated outdated -> faults.show(outdated.message());
        }
    }

    private static void leave() {
        UI.getCurrent().navigate(SpendPages.RECEIPTS);
    }
}
