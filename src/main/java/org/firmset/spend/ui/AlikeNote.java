package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.HashMap;
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
    private final AskFirst first = new AskFirst();
    private Optional<Likeness> now = Optional.empty();

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
        first.on(button, words);
    }

    /** Follows what the fields say. */
    void look(Optional<Likeness> fields) {
        if (first.look(fields.orElse(null))) {
            now = fields;
            tell();
        }
    }

    /** Whether this press only asks, and the next one of the same receipt saves. */
    boolean asks(Receipt receipt) {
        look(Optional.of(Likeness.of(receipt)));
        return other().isPresent() && first.asks();
    }

    private Optional<KeptReceipt> other() {
        return now.map(others::get);
    }

    private void tell() {
        removeAll();
        other().ifPresent(this::tell);
        setVisible(other().isPresent());
    }

    private void tell(KeptReceipt other) {
        add(
                new Span("A receipt of this day, supplier and sum is there already: "),
                ReceiptLink.to(other),
                new Span(". Was this bought as well? Then press Save, and after it Save as well."));
    }
}
