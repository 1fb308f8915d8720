package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.homestead.Material;
import org.firmset.measure.Cash;
import org.firmset.spend.Keys;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.Share;
import org.firmset.spend.table.Numbers;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** One line of a receipt: what, how much and for whom at once, the rest when it is wanted. */
final class LineFields extends Div {
    private final String currency;
    private final TextField text = new TextField("What");
    private final AmountField amount;
    private final ShareFields shares;
    private final ComboBox<LineKind> kind = new ComboBox<>("Paid for");
    private final TextField quantity = new TextField("Quantity");
    private final AmountField unitPrice;
    private final ComboBox<String> material = new ComboBox<>("Material of the homestead");
    private final Button remove = new Button("Remove this line");

    /**
     * @param line null for a new one
     * @param usual who bears a new one, unless people say otherwise
     */
    LineFields(Entering entering, @Nullable ReceiptLine line, List<Share> usual) {
        currency = entering.currency();
        addClassName("fs-line");
        text.setValue(line == null ? "" : line.text());
        text.setMaxLength(500);
        amount = new AmountField("Amount", currency, line == null ? null : line.amount());
        shares = new ShareFields(entering, line == null ? usual : line.shares());
        kind.setItems(LineKind.values());
        kind.setItemLabelGenerator(LineKind::words);
        kind.setValue(line == null ? LineKind.MATERIAL : line.kind());
        quantity.setValue(line == null ? "1" : Numbers.written(line.quantity().abs()));
        quantity.getElement().setAttribute("inputmode", "decimal");
        unitPrice = new AmountField("Price of one", currency, line == null ? null : line.unitPrice());
        unitPrice.addValueChangeListener(e -> work());
        quantity.addValueChangeListener(e -> work());
        materials(entering.homestead().materials(), line == null ? null : line.material());
        remove.addThemeVariants(ButtonVariant.TERTIARY, ButtonVariant.SMALL);
        Div more = new Div(kind, quantity, unitPrice, material, remove);
        more.addClassName("fs-line-more");
        Details details = new Details("Quantity, price, kind", more);
        details.addClassName("fs-line-details");
        add(text, amount, shares, details);
    }

    private void materials(List<Material> known, @Nullable String chosen) {
        Map<String, String> names = new HashMap<>();
        known.forEach(m -> names.put(m.key(), m.name()));
        List<String> keys = new ArrayList<>(known.stream().map(Material::key).toList());
        if (chosen != null && !keys.contains(chosen)) {
            keys.add(chosen);
        }
        material.setItems(keys);
        material.setItemLabelGenerator(k -> names.getOrDefault(k, k + Keys.GONE));
        TypedChoice.allow(material, keys, k -> names.getOrDefault(k, k + Keys.GONE));
        material.setClearButtonVisible(true);
        material.setHelperText("So that it counts for what is still to buy. May stay empty.");
        material.setValue(chosen);
        material.addValueChangeListener(e -> {
            if (e.getValue() != null && text.getValue().isBlank()) {
                text.setValue(names.getOrDefault(e.getValue(), ""));
            }
        });
    }

    /** Quantity and price give the amount, as long as none is written. */
    private void work() {
        Optional<BigDecimal> count = quantity();
        if (amount.getValue().isBlank() && count.isPresent()) {
            unitPrice
                    .peek()
                    .map(p -> count.get().multiply(Cash.amountOf(p)).setScale(2, RoundingMode.HALF_UP))
                    .ifPresent(a -> amount.setValue(a.toPlainString()));
        }
    }

    private Optional<BigDecimal> quantity() {
        return Numbers.typed(quantity.getValue(), currency).filter(n -> n.signum() > 0);
    }

    void onAmount(Runnable changed) {
        amount.addValueChangeListener(e -> changed.run());
    }

    void onRemove(Runnable removed) {
        remove.addClickListener(e -> removed.run());
    }

    void offerRemoval(boolean offered) {
        remove.setVisible(offered);
    }

    void focus() {
        text.focus();
    }

    /** As far as it can be read. */
    Money amount() {
        return amount.orZero();
    }

    Optional<List<Share>> shares() {
        return shares.read();
    }

    /**
     * The line, or nothing with the fields marked.
     *
     * @param back whether it is one of a return, whose numbers are negative
     */
    Optional<ReceiptLine> read(boolean back) {
        Optional<BigDecimal> count = quantity();
        quantity.setInvalid(count.isEmpty());
        quantity.setErrorMessage("A number such as 1 or 12.5");
        boolean said = !text.getValue().isBlank();
        text.setInvalid(!said);
        text.setErrorMessage("Say what it was");
        boolean sound = amount.check(true) & unitPrice.check(false) & said & !material.isInvalid();
        Optional<List<Share>> borne = shares.read();
        if (!sound || count.isEmpty() || borne.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ReceiptLine(
                kind.getValue() == null ? LineKind.OTHER : kind.getValue(),
                text.getValue(),
                material.getValue(),
                back ? count.get().negate() : count.get(),
                unitPrice.peek().orElse(null),
                back ? amount.orZero().negate() : amount.orZero(),
                borne.get()));
    }
}
