package org.firmset.spend.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.QueryParameters;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptFilter;
import org.jspecify.annotations.Nullable;

/** Chooses which receipts are listed; the address says what is chosen, so that it can be kept and sent. */
final class FilterBar extends Div {
    private final ReceiptFilter filter;

    FilterBar(Homestead homestead, Bearers bearers, Written written, ReceiptFilter filter) {
        this.filter = filter;
        addClassName("fs-filter");
        add(
                subproject(homestead, bearers, written),
                stage(homestead, bearers, written),
                choice(
                        "Supplier",
                        written.suppliers(),
                        s -> s,
                        filter.supplier(),
                        s -> with(filter.subproject(), filter.stage(), s, filter.kind(), filter.month())),
                choice(
                        "Paid for",
                        List.of(LineKind.values()),
                        LineKind::words,
                        filter.kind(),
                        k -> with(filter.subproject(), filter.stage(), filter.supplier(), k, filter.month())),
                choice(
                        "Month",
                        written.months(),
                        Months::words,
                        filter.month(),
                        m -> with(filter.subproject(), filter.stage(), filter.supplier(), filter.kind(), m)));
        if (!filter.equals(ReceiptFilter.ALL)) {
            add(new Anchor(SpendPages.RECEIPTS, "Show all again"));
        }
    }

    private static ReceiptFilter with(
            @Nullable String subproject,
            @Nullable String stage,
            @Nullable String supplier,
            @Nullable LineKind kind,
            @Nullable YearMonth month) {
        return new ReceiptFilter(subproject, stage, supplier, kind, month);
    }

    private interface Change<T> {
        ReceiptFilter to(@Nullable T value);
    }

    private static <T> ComboBox<T> choice(
            String label, Collection<T> values, Function<T, String> words, @Nullable T chosen, Change<T> change) {
        ComboBox<T> box = new ComboBox<>(label);
        List<T> items = chosen == null || values.contains(chosen)
                ? List.copyOf(values)
                : Stream.concat(values.stream(), Stream.of(chosen)).toList();
        box.setItems(items);
        box.setItemLabelGenerator(words::apply);
        box.setClearButtonVisible(true);
        box.setPlaceholder("all");
        box.setValue(chosen);
        box.addValueChangeListener(e -> UI.getCurrent()
                .navigate(SpendPages.RECEIPTS, QueryParameters.fromString(SpendPages.query(change.to(e.getValue())))));
        return box;
    }

    private ComboBox<String> subproject(Homestead homestead, Bearers bearers, Written written) {
        Stream<String> known = homestead.subprojects().stream().map(Subproject::key);
        Stream<String> onReceipts = written.bearers().stream().map(Bearers.Bearer::subproject);
        List<String> keys = Stream.concat(Stream.concat(known, onReceipts).distinct(), Stream.of(ReceiptFilter.NOBODY))
                .toList();
        return choice(
                "Subproject",
                keys,
                k -> k.equals(ReceiptFilter.NOBODY) ? "not said yet" : bearers.subproject(k),
                filter.subproject(),
                // another subproject has other stages
                s -> with(s, null, filter.supplier(), filter.kind(), filter.month()));
    }

    private ComboBox<String> stage(Homestead homestead, Bearers bearers, Written written) {
        String of = filter.subproject();
        Stream<String> known = homestead.stages().stream()
                .filter(s -> of == null || s.subproject().equals(of))
                .map(Stage::key);
        Stream<String> onReceipts = written.bearers().stream()
                .filter(s -> s.stage() != null && (of == null || s.subproject().equals(of)))
                .map(s -> String.valueOf(s.stage()));
        List<String> keys = Stream.concat(Stream.concat(known, onReceipts).distinct(), Stream.of(ReceiptFilter.NOBODY))
                .toList();
        return choice(
                "Stage",
                keys,
                k -> k.equals(ReceiptFilter.NOBODY) ? "of no single stage" : bearers.stage(k),
                filter.stage(),
                s -> with(filter.subproject(), s, filter.supplier(), filter.kind(), filter.month()));
    }
}
