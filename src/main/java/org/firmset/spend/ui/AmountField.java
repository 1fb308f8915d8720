package org.firmset.spend.ui;

import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.table.Numbers;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** A sum of money as people type it: "12.40", "12,40", "$1,240.00". */
final class AmountField extends TextField {

    private final String currency;

    /** @param amount shown without its sign, as a return is entered without one; null for an empty field */
    AmountField(String label, String currency, @Nullable Money amount) {
        super(label);
        this.currency = currency;
        setValue(amount == null ? "" : Cash.amountOf(amount).abs().toPlainString());
        TypedNumber.allow(this);
    }

    /** What stands there, nothing said about what does not fit; empty for an empty field too. */
    Optional<Money> peek() {
        return Numbers.amount(getValue(), currency);
    }

    /** Whether it can be used; marks the field when not. */
    boolean check(boolean needed) {
        boolean blank = getValue().isBlank();
        boolean fits = blank ? !needed : peek().isPresent();
        setInvalid(!fits);
        setErrorMessage(
                blank ? "This is needed" : isNegative() ? "Write it without a minus" : "Write it such as 12.40");
        return fits;
    }

    private boolean isNegative() {
        return Numbers.typed(getValue(), currency).filter(n -> n.signum() < 0).isPresent();
    }

    Money orZero() {
        return peek().orElse(Cash.of(BigDecimal.ZERO, currency));
    }
}
