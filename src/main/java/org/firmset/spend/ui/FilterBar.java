package org.firmset.spend.ui;

import static java.util.stream.Collectors.toMap;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.QueryParameters;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Subproject;
import org.firmset.spend.Keys;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.ReceiptState;
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
                choice("Supplier", written.suppliers(), s -> s, filter.supplier(), filter::withSupplier),
                choice("Paid for", List.of(LineKind.values()), LineKind::words, filter.kind(), filter::withKind),
                choice("State", List.of(ReceiptState.values()), ReceiptState::words, filter.state(), filter::withState),
                choice("Month", written.months(), Months::words, filter.month(), filter::withMonth));
        if (filter.material() != null) {
            add(material(homestead, written));
        }
        if (filter.finished() != null) {
            add(work(filter.finished()));
        }
        if (!filter.equals(ReceiptFilter.ALL)) {
            add(new Anchor(SpendPages.RECEIPTS, "Show all again"));
        }
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
                filter::withSubproject);
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
                filter::withStage);
    }

    /** Only there when a figure of one material is opened. */
    private ComboBox<String> material(Homestead homestead, Written written) {
        Map<String, String> names = homestead.materials().stream().collect(toMap(Material::key, Material::name));
        Stream<String> known = homestead.materials().stream().map(Material::key);
        List<String> keys = Stream.concat(
                        Stream.concat(known, written.materials().stream()).distinct(), Stream.of(ReceiptFilter.NOBODY))
                .toList();
        return choice(
                "Material",
                keys,
                k -> k.equals(ReceiptFilter.NOBODY) ? "none of the homestead's" : names.getOrDefault(k, k + Keys.GONE),
                filter.material(),
                filter::withMaterial);
    }

    /** Only there when a figure of finished work is opened. */
    private ComboBox<Set<String>> work(Set<String> finished) {
        return choice("Work", List.of(finished), f -> "finished stages only", finished, filter::withFinished);
    }
}
