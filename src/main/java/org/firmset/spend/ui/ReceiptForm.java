package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.ContentHash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.firmset.spend.Share;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** A receipt as fields. Most of an ordinary one is filled in already: today, the last supplier, one line. */
final class ReceiptForm extends Div {
    private final Entering entering;
    private final @Nullable Receipt before;
    private final DatePicker date = new DatePicker("Date");
    private final ComboBox<String> supplier = new ComboBox<>("Supplier");
    private final RadioButtonGroup<ReceiptState> state = new RadioButtonGroup<>("It is");
    private final Div lineList = new Div();
    private final List<LineFields> lines = new ArrayList<>();
    private final AmountField tax;
    private final AmountField discount;
    private final AmountField deposit;
    private final AmountField total;
    private final Paragraph comesTo = new Paragraph();

    /** @param before null for a new one */
    ReceiptForm(Entering entering, @Nullable Receipt before) {
        this.entering = entering;
        this.before = before;
        String currency = entering.currency();
        addClassName("fs-receipt-form");
        tax = new AmountField("Tax on top", currency, before == null ? null : unlessZero(before.tax()));
        discount = new AmountField("Discount", currency, before == null ? null : unlessZero(before.discount()));
        deposit = new AmountField("Paid down so far", currency, before == null ? null : unlessZero(before.deposit()));
        total = new AmountField("Total on the paper", currency, before == null ? null : before.total());
        comesTo.getElement().setAttribute("role", "status");
        comesTo.addClassName("fs-comes-to");
        addHead();
        addLines();
        addFoot();
        reckon();
    }

    private static @Nullable Money unlessZero(Money amount) {
        return amount.isZero() ? null : amount;
    }

    private void addHead() {
        date.setLocale(Locale.UK);
        date.setI18n(new DatePicker.DatePickerI18n().setDateFormat("yyyy-MM-dd"));
        date.setValue(before == null ? entering.today() : before.date());
        supplier.setAllowCustomValue(true);
        List<String> known = new ArrayList<>(entering.suppliers());
        supplier.setItems(known);
        supplier.addCustomValueSetListener(e -> {
            if (!known.contains(e.getDetail())) {
                known.add(e.getDetail());
                supplier.setItems(known);
            }
            supplier.setValue(e.getDetail());
        });
        Optional<String> usual =
                before == null ? entering.last().map(Receipt::supplier) : Optional.of(before.supplier());
        usual.ifPresent(supplier::setValue);
        state.setItems(ReceiptState.values());
        state.setItemLabelGenerator(ReceiptState::words);
        state.setValue(before == null ? ReceiptState.PAID : before.state());
        state.addValueChangeListener(e -> reckon());
        Div head = new Div(date, supplier, state);
        head.addClassName("fs-receipt-head");
        add(head);
    }

    private void addLines() {
        if (before == null) {
            addLine(null, usualShares());
        } else {
            before.lines().forEach(l -> addLine(l, List.of()));
        }
        Button more = new Button("Add a line", e -> {
            List<Share> same = lines.getLast().shares().orElse(List.of());
            addLine(null, same).focus();
        });
        more.addThemeVariants(ButtonVariant.TERTIARY);
        add(lineList, more);
    }

    /** What was paid for last is most likely being paid for again. */
    private List<Share> usualShares() {
        return entering.last().map(r -> r.lines().getFirst().shares()).orElse(List.of()).stream()
                .filter(s -> entering.bearers().all().contains(Bearers.Bearer.of(s)))
                .toList();
    }

    private LineFields addLine(@Nullable ReceiptLine line, List<Share> usual) {
        LineFields fields = new LineFields(entering, line, usual);
        fields.onAmount(this::reckon);
        fields.onRemove(() -> {
            lines.remove(fields);
            lineList.remove(fields);
            offerRemovals();
            reckon();
        });
        lines.add(fields);
        lineList.add(fields);
        offerRemovals();
        return fields;
    }

    private void offerRemovals() {
        lines.forEach(l -> l.offerRemoval(lines.size() > 1));
    }

    private void addFoot() {
        for (AmountField field : List.of(tax, discount, deposit, total)) {
            field.addValueChangeListener(e -> reckon());
        }
        total.setHelperText("May stay empty; when it is written, it is checked");
        Div foot = new Div(tax, discount, deposit, total);
        foot.addClassName("fs-receipt-foot");
        add(foot, comesTo);
    }

    /** Says what the fields come to, while they are filled in. */
    private void reckon() {
        deposit.setVisible(state.getValue() == ReceiptState.ORDERED);
        Money sum = lines.stream().map(LineFields::amount).reduce(tax.orZero().subtract(discount.orZero()), Money::add);
        String text =
                "Comes to " + Figures.show(sum) + (state.getValue() == ReceiptState.RETURNED ? " given back." : ".");
        comesTo.setText(text + against(sum));
        boolean differs = total.peek().filter(t -> !t.isEqualTo(sum)).isPresent();
        comesTo.setClassName("fs-warning", differs);
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

    /** Where typing begins: of a new receipt only this is not known. */
    void begin() {
        if (supplier.getValue() == null) {
            supplier.focus();
        } else {
            lines.getFirst().focus();
        }
    }

    /**
     * The receipt, or nothing with the fields marked.
     *
     * @param document what it names as its photo or paper
     */
    Optional<Receipt> read(@Nullable ContentHash document) {
        boolean back = state.getValue() == ReceiptState.RETURNED;
        boolean sound = checkHead();
        sound &= tax.check(false) & discount.check(false) & deposit.check(false) & total.check(false);
        List<Optional<ReceiptLine>> read = lines.stream().map(l -> l.read(back)).toList();
        if (!sound || read.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        LocalDate day = date.getValue();
        return Optional.of(new Receipt(
                before == null ? "r-" + day : before.key(),
                day,
                supplier.getValue(),
                state.getValue(),
                read.stream().flatMap(Optional::stream).toList(),
                signed(tax.orZero(), back),
                signed(discount.orZero(), back),
                state.getValue() == ReceiptState.ORDERED ? deposit.orZero() : Cash.ofCents(0, entering.currency()),
                total.peek().map(m -> signed(m, back)).orElse(null),
                document));
    }

    private boolean checkHead() {
        date.setInvalid(date.getValue() == null);
        date.setErrorMessage("Write it such as 2026-10-17");
        boolean named = supplier.getValue() != null && !supplier.getValue().isBlank();
        supplier.setInvalid(!named);
        supplier.setErrorMessage("Who sold it?");
        return named && date.getValue() != null;
    }

    private static Money signed(Money amount, boolean back) {
        return back ? amount.negate() : amount;
    }
}
