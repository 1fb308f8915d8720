package org.firmset.spend.ui;

import java.time.LocalDate;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptState;
import org.jspecify.annotations.Nullable;

/**
 * The day the rest of an order is due on or was paid on. It shows for an order, and for what is paid when it was an order
 * before or anything says that its rest was paid later. When an order becomes paid, the rest was paid today until somebody
 * says otherwise.
 */
final class RestDayField extends DayField {
    private final LocalDate today;
    private final boolean wasOrdered;
    private ReceiptState state;
    private @Nullable LocalDate due;

    /** @param before null for a new receipt */
    RestDayField(LocalDate today, @Nullable Receipt before) {
        super("Rest due on", before == null ? null : before.restOn());
        this.today = today;
        state = before == null ? ReceiptState.PAID : before.state();
        wasOrdered = state == ReceiptState.ORDERED;
        setClearButtonVisible(true);
    }

    /** @param paidDown whether anything stands in the field of what was paid down */
    void follow(ReceiptState now, boolean paidDown) {
        if (now != ReceiptState.RETURNED) {
            change(now, paidDown);
        }
        boolean ordered = now == ReceiptState.ORDERED;
        setLabel(ordered ? "Rest due on" : "Rest paid on");
        setHelperText(ordered ? "May stay empty: then it is due when the goods come" : "");
        setVisible(ordered || (now.isPaid() && (wasOrdered || paidDown || getValue() != null)));
    }

    /** A return has no rest; whoever comes back from it by a slip goes on from where they were. */
    private void change(ReceiptState now, boolean paidDown) {
        ReceiptState last = state;
        state = now;
        if (last == ReceiptState.ORDERED && now.isPaid() && (wasOrdered || paidDown)) {
            due = getValue();
            setValue(today);
        } else if (last.isPaid() && now == ReceiptState.ORDERED) {
            setValue(due);
        }
    }

    /** Null when there is none, and when it does not show. */
    @Nullable
    LocalDate day() {
        return isVisible() ? getValue() : null;
    }

    /** Whether it can be used: what was typed is a day. */
    boolean check() {
        return !isVisible() || !isInvalid();
    }
}
