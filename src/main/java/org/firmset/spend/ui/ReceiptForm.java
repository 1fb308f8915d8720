package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Likeness;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** A receipt as fields. Most of an ordinary one is filled in already: today, the last supplier, one line. */
final class ReceiptForm extends Div {
    private final @Nullable Receipt before;
    private final ReceiptHead head;
    private final LineList lines;
    private final ReceiptFoot foot;
    private Runnable changed = () -> {};

    /** @param before null for a new one */
    ReceiptForm(Entering entering, @Nullable Receipt before) {
        this.before = before;
        head = new ReceiptHead(entering, before);
        lines = new LineList(entering, before, this::reckon);
        foot = new ReceiptFoot(entering.currency(), entering.today(), before);
        addClassName("fs-receipt-form");
        add(head, lines, foot);
        head.onChange(this::reckon);
        foot.onChange(this::reckon);
        reckon();
    }

    /** @param listener run after what the fields come to may have changed */
    void onChange(Runnable listener) {
        changed = listener;
    }

    private void reckon() {
        foot.tell(head.state(), sum());
        changed.run();
    }

    private Money sum() {
        return foot.sum(lines.sum());
    }

    /** What it looks like as it stands; empty while day or supplier is missing, or it comes to nothing. */
    Optional<Likeness> likeness() {
        Money sum = ReceiptFoot.signed(sum(), head.isReturned());
        return sum.isZero()
                ? Optional.empty()
                : head.date()
                        .flatMap(day -> head.supplier().map(supplier -> new Likeness(day, supplier, Cash.cents(sum))));
    }

    /** Of an order the rest was paid today, unless a day already says otherwise. */
    void become(ReceiptState state) {
        head.become(state);
    }

    /** Where typing begins: of a new receipt only this is not known. */
    void begin() {
        if (head.supplier().isEmpty()) {
            head.begin();
        } else {
            lines.begin();
        }
    }

    /**
     * The receipt, or nothing with the fields marked.
     *
     * @param document what it names as its photo or paper
     */
    Optional<Receipt> read(@Nullable ContentHash document) {
        boolean back = head.isReturned();
        boolean sound = head.check() & foot.check();
        Optional<List<ReceiptLine>> read = lines.read(back);
        if (!sound || read.isEmpty()) {
            return Optional.empty();
        }
        LocalDate day = head.date().orElseThrow();
        return Optional.of(new Receipt(
                before == null ? "r-" + day : before.key(),
                day,
                head.supplier().orElseThrow(),
                head.state(),
                read.get(),
                foot.tax(back),
                foot.discount(back),
                foot.paidDown(),
                foot.restOn(),
                foot.total(back),
                document));
    }
}
