package org.firmset.spend.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptState;
import org.jspecify.annotations.Nullable;

/** When it was bought, where, and whether it is paid. */
final class ReceiptHead extends Div {
    private final DayField date;
    private final ComboBox<String> supplier = new ComboBox<>("Supplier");
    private final RadioButtonGroup<ReceiptState> state = new RadioButtonGroup<>("It is");

    /** @param before null for a new one */
    ReceiptHead(Entering entering, @Nullable Receipt before) {
        addClassName("fs-receipt-head");
        date = new DayField("Date", before == null ? entering.today() : before.date());
        Stream<String> own = before == null ? Stream.empty() : Stream.of(before.supplier());
        offer(Stream.concat(entering.suppliers().stream(), own).distinct().toList());
        Optional<String> usual =
                before == null ? entering.last().map(Receipt::supplier) : Optional.of(before.supplier());
        usual.ifPresent(supplier::setValue);
        state.setItems(ReceiptState.values());
        state.setItemLabelGenerator(ReceiptState::words);
        state.setValue(before == null ? ReceiptState.PAID : before.state());
        add(date, supplier, state);
    }

    private void offer(List<String> suppliers) {
        List<String> known = new ArrayList<>(suppliers);
        supplier.setAllowCustomValue(true);
        supplier.setItems(known);
        supplier.addCustomValueSetListener(e -> {
            if (!known.contains(e.getDetail())) {
                known.add(e.getDetail());
                supplier.setItems(known);
            }
            supplier.setValue(e.getDetail());
        });
    }

    void onChange(Runnable changed) {
        date.addValueChangeListener(e -> changed.run());
        supplier.addValueChangeListener(e -> changed.run());
        state.addValueChangeListener(e -> changed.run());
    }

    /** Empty while there is none, or none that can be read. */
    Optional<LocalDate> date() {
        return Optional.ofNullable(date.getValue());
    }

    /** Empty while nobody is named. */
    Optional<String> supplier() {
        return Optional.ofNullable(supplier.getValue()).filter(s -> !s.isBlank());
    }

    ReceiptState state() {
        return state.getValue();
    }

    void become(ReceiptState next) {
        state.setValue(next);
    }

    boolean isReturned() {
        return state() == ReceiptState.RETURNED;
    }

    void begin() {
        supplier.focus();
    }

    /** Whether it is filled in; marks the fields that are not. */
    boolean check() {
        date.setInvalid(date().isEmpty());
        date.setErrorMessage(DayField.SUCH_AS);
        supplier.setInvalid(supplier().isEmpty());
        supplier.setErrorMessage("Who sold it?");
        return date().isPresent() && supplier().isPresent();
    }
}
