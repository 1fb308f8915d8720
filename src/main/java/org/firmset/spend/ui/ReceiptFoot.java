package org.firmset.spend.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptState;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** What stands under the lines of a receipt, and what all of it comes to while it is filled in. */
final class ReceiptFoot extends Div {
    private final String currency;
    private final AmountField tax;
    private final AmountField discount;
    private final AmountField deposit;
    private final RestDayField rest;
    private final AmountField total;
    private final Paragraph comesTo = new Paragraph();

    /** @param before null for a new one */
    ReceiptFoot(String currency, LocalDate today, @Nullable Receipt before) {
        this.currency = currency;
        tax = field("Tax on top", before == null ? null : unlessZero(before.tax()));
        discount = field("Discount", before == null ? null : unlessZero(before.discount()));
        deposit = field("Paid down so far", before == null ? null : unlessZero(before.deposit()));
        rest = new RestDayField(today, before);
        total = field("Total on the paper", before == null ? null : before.total());
        total.setHelperText("May stay empty; when it is written, it is checked");
        comesTo.getElement().setAttribute("role", "status");
        comesTo.addClassName("fs-comes-to");
        Div fields = new Div(tax, discount, deposit, rest, total);
        fields.addClassName("fs-receipt-foot");
        add(fields, comesTo);
    }

    private AmountField field(String label, @Nullable Money amount) {
        return new AmountField(label, currency, amount);
    }

    private static @Nullable Money unlessZero(Money amount) {
        return amount.isZero() ? null : amount;
    }

    void onChange(Runnable changed) {
        List.of(tax, discount, deposit, total).forEach(f -> f.addValueChangeListener(e -> changed.run()));
        rest.addValueChangeListener(e -> changed.run());
    }

    /** Lines with tax and discount, without a sign. */
    Money sum(Money lines) {
        return lines.add(tax.orZero()).subtract(discount.orZero());
    }

    /** Says what the fields come to. */
    void tell(ReceiptState state, Money sum) {
        rest.follow(state, !deposit.getValue().isBlank());
        deposit.setVisible(rest.isVisible());
        String text = "Comes to " + Figures.show(sum)
                + (state == ReceiptState.RETURNED ? " given back." : restOf(state, sum));
        comesTo.setText(text + against(sum));
        boolean differs = total.peek().filter(t -> !t.isEqualTo(sum)).isPresent();
        comesTo.setClassName("fs-warning", differs);
    }

    /** Of an order what is not paid down; a deposit of more than the order is told when it is saved. */
    private String restOf(ReceiptState state, Money sum) {
        Money open = sum.subtract(deposit.orZero());
        LocalDate day = rest.day();
        boolean ordered = state == ReceiptState.ORDERED;
        if (!open.isPositive() || (!ordered && day == null)) {
            return ".";
        }
        return ", " + Figures.show(open) + (ordered ? " of it still to pay" : " of it paid")
                + (day == null ? "." : " on " + Months.date(day) + ".");
    }

    private String against(Money sum) {
        Optional<Money> written = total.peek();
        if (written.isEmpty()) {
            return "";
        }
        Money gap = written.get().subtract(sum);
        if (gap.isZero()) {
            return " That is the total on the paper.";
        }
        return " The paper says " + Figures.show(gap.abs()) + (gap.isPositive() ? " more" : " less")
                + ": look for a line, a tax or a discount.";
    }

    /** Whether all of it can be used; marks the fields that cannot. */
    boolean check() {
        return tax.check(false) & discount.check(false) & deposit.check(false) & rest.check() & total.check(false);
    }

    Money tax(boolean back) {
        return signed(tax.orZero(), back);
    }

    Money discount(boolean back) {
        return signed(discount.orZero(), back);
    }

    Money paidDown() {
        return deposit.isVisible() ? deposit.orZero() : Cash.ofCents(0, currency);
    }

    @Nullable
    LocalDate restOn() {
        return rest.day();
    }

    @Nullable
    Money total(boolean back) {
        return total.peek().map(m -> signed(m, back)).orElse(null);
    }

    static Money signed(Money amount, boolean back) {
        return back ? amount.negate() : amount;
    }
}
