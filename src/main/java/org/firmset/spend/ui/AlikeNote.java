package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.spend.Likeness;
import org.firmset.spend.Receipt;
import org.firmset.spend.store.KeptReceipt;
import org.jspecify.annotations.Nullable;

/**
 * Says beside the save button that a receipt of the same day, supplier and sum is there already. The first press then only
 * asks; a second one saves, unless the fields were changed in between.
 */
final class AlikeNote extends Paragraph {
    private final Map<Likeness, KeptReceipt> others = new HashMap<>();
    private final Map<Button, String> asked = new LinkedHashMap<>();
    private final Map<Button, String> usual = new LinkedHashMap<>();
    private Optional<Likeness> now = Optional.empty();
    private Optional<Likeness> agreed = Optional.empty();

    /** @param own the one that is changed; null for a new one. As it stands it was taken before, so it asks nothing. */
    AlikeNote(List<KeptReceipt> all, @Nullable KeptReceipt own) {
        all.forEach(r -> others.putIfAbsent(Likeness.of(r.receipt()), r));
        if (own != null) {
            others.remove(Likeness.of(own.receipt()));
        }
        addClassNames("fs-warning", "fs-alike");
        getElement().setAttribute("role", "status");
        tell();
    }

    /** @param words what the button says for the second press */
    void asksOn(Button button, String words) {
        usual.put(button, button.getText());
        asked.put(button, words);
    }

    /** Follows what the fields say. */
    void look(Optional<Likeness> fields) {
        if (!fields.equals(now)) {
            now = fields;
            agreed = Optional.empty();
            tell();
        }
    }

    /** Whether this press only asks, and the next one of the same receipt saves. */
    boolean asks(Receipt receipt) {
        look(Optional.of(Likeness.of(receipt)));
        boolean asks = other().isPresent() && agreed.isEmpty();
        if (asks) {
            agreed = now;
            asked.forEach(Button::setText);
        }
        return asks;
    }

    private Optional<KeptReceipt> other() {
        return now.map(others::get);
    }

    private void tell() {
        usual.forEach(Button::setText);
        removeAll();
        other().ifPresent(this::tell);
        setVisible(other().isPresent());
    }

    private void tell(KeptReceipt other) {
        Receipt receipt = other.receipt();
        Anchor link = new Anchor(
                SpendPages.receipt(other.id()),
                "%s, %s, %s".formatted(receipt.supplier(), Months.date(receipt.date()), Figures.show(receipt.sum())));
        link.setTarget("_blank");
        add(
                new Span("A receipt of this day, supplier and sum is there already: "),
                link,
                new Span(". Was this bought as well? Then press Save, and after it Save as well."));
    }
}
