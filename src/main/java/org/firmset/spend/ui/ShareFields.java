package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.spend.Share;
import org.firmset.spend.table.Numbers;
import org.firmset.spend.ui.Bearers.Bearer;
import org.jspecify.annotations.Nullable;

/** Who bears a line: nobody yet, one, or several by parts. */
final class ShareFields extends Div {
    private final Entering entering;
    private final Div list = new Div();
    private final List<Row> rows = new ArrayList<>();

    private record Row(ComboBox<Bearer> bearer, TextField weight, Button remove, Div frame) {}

    ShareFields(Entering entering, List<Share> shares) {
        this.entering = entering;
        addClassName("fs-shares");
        Button more =
                new Button("Share with another", e -> addRow(null).bearer().focus());
        more.addThemeVariants(ButtonVariant.TERTIARY, ButtonVariant.SMALL);
        add(list, more);
        if (shares.isEmpty()) {
            addRow(null);
        }
        shares.forEach(this::addRow);
    }

    private Row addRow(@Nullable Share share) {
        ComboBox<Bearer> bearer = BearerBox.of(entering.bearers(), share == null ? null : Bearer.of(share));
        TextField weight = new TextField("Parts");
        weight.setValue(share == null ? "1" : Numbers.written(share.weight()));
        weight.getElement().setAttribute("inputmode", "decimal");
        Button remove = new Button("Not for this");
        remove.addThemeVariants(ButtonVariant.TERTIARY, ButtonVariant.SMALL);
        Div frame = new Div(bearer, weight, remove);
        frame.addClassName("fs-share");
        Row row = new Row(bearer, weight, remove, frame);
        remove.addClickListener(e -> remove(row));
        rows.add(row);
        list.add(frame);
        showParts();
        return row;
    }

    private void remove(Row row) {
        rows.remove(row);
        list.remove(row.frame());
        showParts();
    }

    /** Parts are asked for only when there is something to divide. */
    private void showParts() {
        rows.forEach(r -> {
            r.weight().setVisible(rows.size() > 1);
            r.remove().setVisible(rows.size() > 1);
        });
    }

    /** Empty, with the field marked, when a part is no number or what was typed names nobody; a row without a bearer counts as not there. */
    Optional<List<Share>> read() {
        List<Share> shares = new ArrayList<>();
        boolean sound = true;
        for (Row row : rows) {
            Optional<BigDecimal> weight =
                    Numbers.typed(row.weight().getValue(), entering.currency()).filter(n -> n.signum() > 0);
            row.weight().setInvalid(weight.isEmpty());
            row.weight().setErrorMessage("A number such as 1 or 2.5");
            sound &= weight.isPresent() && !row.bearer().isInvalid();
            Bearer bearer = row.bearer().getValue();
            if (bearer != null) {
                weight.ifPresent(w -> shares.add(new Share(bearer.subproject(), bearer.stage(), w)));
            }
        }
        return sound ? Optional.of(shares) : Optional.empty();
    }
}
