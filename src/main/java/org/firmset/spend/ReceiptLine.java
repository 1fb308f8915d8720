package org.firmset.spend;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.measure.Measured;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * One line of a receipt.
 *
 * @param text what the receipt calls it
 * @param material key of the material when it is one of the homestead's; null otherwise
 * @param quantity how many packs or units; negative in a return
 * @param unitPrice price of one, before tax and discount; null when only the amount is known
 * @param amount the line's sum before tax and discount; negative in a return
 * @param shares who bears it; empty while that has not been said
 */
public record ReceiptLine(
        LineKind kind,
        String text,
        @Nullable String material,
        BigDecimal quantity,
        @Nullable Money unitPrice,
        Money amount,
        List<Share> shares) {
    public ReceiptLine {
        text = text.strip();
        quantity = Measured.normal(quantity);
        shares = List.copyOf(shares);
    }

    /** Whether it is packs of a material. A tool, a fee or a refundable deposit that names one is no pack of it. */
    public boolean isPacks() {
        return kind == LineKind.MATERIAL && material != null;
    }
}
