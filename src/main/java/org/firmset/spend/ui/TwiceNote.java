package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import java.util.Optional;
import org.firmset.spend.TripReceipt;
import org.firmset.spend.TripTwice;
import org.firmset.spend.store.KeptReceipt;

/**
 * Says beside the save button which receipts of a trip's days may hold some of it already. The first press then only asks;
 * a second one saves, unless what was found has changed in between.
 */
final class TwiceNote extends Div {
    private final List<KeptReceipt> all;
    private final AskFirst first = new AskFirst();
    private List<Found> found = List.of();

    private record Found(KeptReceipt kept, TripTwice what) {}

    TwiceNote(List<KeptReceipt> all) {
        this.all = all;
        addClassNames("fs-warning", "fs-alike");
        getElement().setAttribute("role", "status");
        setVisible(false);
    }

    /** @param words what the button says for the second press */
    void asksOn(Button button, String words) {
        first.on(button, words);
    }

    /** Follows what the fields say. */
    void look(Optional<TripReceipt> trip) {
        found = trip.map(this::found).orElse(List.of());
        if (first.look(found)) {
            tell();
        }
    }

    /** Whether this press only asks, and the next one saves. */
    boolean asks(TripReceipt trip) {
        look(Optional.of(trip));
        return !found.isEmpty() && first.asks();
    }

    private List<Found> found(TripReceipt trip) {
        return all.stream()
                .flatMap(k -> TripTwice.of(trip, k.receipt()).map(what -> new Found(k, what)).stream())
                .toList();
    }

    private void tell() {
        removeAll();
        setVisible(!found.isEmpty());
        UnorderedList list = new UnorderedList();
        found.forEach(f -> list.add(
                new ListItem(ReceiptLink.to(f.kept()), new Span(" " + f.what().words()))));
        add(
                new Paragraph("Some of this may be counted already. Receipts of these days and the day before:"),
                list,
                new Paragraph("Is it another cost? Then press Save, and after it Save as well. Otherwise leave out here"
                        + " what stands there."));
    }
}
