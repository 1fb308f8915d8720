package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.Share;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/** The lines of a receipt, at least one. */
final class LineList extends Div {
    private final Entering entering;
    private final Runnable changed;
    private final Div list = new Div();
    private final List<LineFields> lines = new ArrayList<>();

    /**
     * @param before null for a new one
     * @param changed run when what they come to may have changed
     */
    LineList(Entering entering, @Nullable Receipt before, Runnable changed) {
        this.entering = entering;
        this.changed = changed;
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
        add(list, more);
    }

    /** What was paid for last is most likely being paid for again. */
    private List<Share> usualShares() {
        return entering.last().map(r -> r.lines().getFirst().shares()).orElse(List.of()).stream()
                .filter(s -> entering.bearers().all().contains(Bearers.Bearer.of(s)))
                .toList();
    }

    private LineFields addLine(@Nullable ReceiptLine line, List<Share> usual) {
        LineFields fields = new LineFields(entering, line, usual);
        fields.onAmount(changed);
        fields.onRemove(() -> {
            lines.remove(fields);
            list.remove(fields);
            offerRemovals();
            changed.run();
        });
        lines.add(fields);
        list.add(fields);
        offerRemovals();
        return fields;
    }

    private void offerRemovals() {
        lines.forEach(l -> l.offerRemoval(lines.size() > 1));
    }

    /** What they come to, as it is typed. */
    Money sum() {
        return lines.stream().map(LineFields::amount).reduce(Cash.ofCents(0, entering.currency()), Money::add);
    }

    void begin() {
        lines.getFirst().focus();
    }

    /**
     * All lines, or nothing with their fields marked.
     *
     * @param back whether they were given back
     */
    Optional<List<ReceiptLine>> read(boolean back) {
        List<Optional<ReceiptLine>> read = lines.stream().map(l -> l.read(back)).toList();
        return read.stream().allMatch(Optional::isPresent)
                ? Optional.of(read.stream().flatMap(Optional::stream).toList())
                : Optional.empty();
    }
}
