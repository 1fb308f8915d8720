package org.firmset.homestead.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Given;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Material;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Supply;
import org.firmset.homestead.Takeoff;
import org.firmset.homestead.takeoff.Needs;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Show;
import org.firmset.trade.trace.Whole;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Under which name a takeoff is kept, which stage it feeds, and which of its quantities is which material. */
final class KeepForm extends Div {
    private final Homestead homestead;
    private final Kind<?> kind;
    private final @Nullable Takeoff before;
    private final TextField name;
    private final ComboBox<String> stage = new ComboBox<>("Stage");
    private final Div supplies = new Div();
    private final Map<String, ComboBox<String>> materials = new LinkedHashMap<>();

    /** @param before what is kept already; null for a new one */
    KeepForm(Homestead homestead, Kind<?> kind, @Nullable Takeoff before) {
        this.homestead = homestead;
        this.kind = kind;
        this.before = before;
        addClassName("fs-form");
        name = new TextField("Name", before == null ? "" : before.name(), kind.name());
        Map<String, String> names = homestead.stages().stream().collect(Collectors.toMap(Stage::key, Stage::name));
        stage.setItems(homestead.stages().stream().map(Stage::key).toList());
        stage.setItemLabelGenerator(k -> names.getOrDefault(k, k));
        stage.setClearButtonVisible(true);
        stage.setHelperText("It takes its materials from here. May stay empty.");
        if (before != null && before.stage() != null) {
            stage.setValue(before.stage());
        }
        add(name, stage, supplies);
    }

    /** Shows a choice of material for each quantity that can be bought, and what that comes to. */
    void offer(Worksheet worksheet) {
        Map<String, String> chosen = new LinkedHashMap<>();
        if (before != null) {
            before.supplies().forEach(s -> chosen.put(s.line(), s.material()));
        }
        materials.forEach((line, box) -> {
            if (box.getValue() == null) {
                chosen.remove(line);
            } else {
                chosen.put(line, box.getValue());
            }
        });
        offerNothing();
        worksheet.lines(Line.Role.MATERIAL).forEach(line -> supplies.add(choice(line, chosen.get(line.key()))));
    }

    void offerNothing() {
        supplies.removeAll();
        materials.clear();
    }

    private Div choice(Line line, @Nullable String chosen) {
        Map<String, Material> known =
                homestead.materials().stream().collect(Collectors.toMap(Material::key, Function.identity()));
        ComboBox<String> box = new ComboBox<>(line.name() + ": " + Show.amount(line.amount(), homestead.units()));
        box.setItems(homestead.materials().stream().map(Material::key).toList());
        box.setItemLabelGenerator(
                k -> Optional.ofNullable(known.get(k)).map(Material::name).orElse(k));
        box.setClearButtonVisible(true);
        box.setHelperText("Bought as this material. May stay empty.");
        Paragraph comes = new Paragraph();
        comes.addClassName("fs-figure-note");
        box.addValueChangeListener(e -> comes.setText(comesTo(line, known.get(e.getValue()))));
        if (chosen != null && known.containsKey(chosen)) {
            box.setValue(chosen);
        }
        materials.put(line.key(), box);
        return new Div(box, comes);
    }

    /** How many packs, and how many of them are on site already. */
    private String comesTo(Line line, @Nullable Material material) {
        if (material == null) {
            return "";
        }
        return Needs.packs(line.amount(), material).stream()
                .mapToObj(exact -> against(Whole.up(exact), material))
                .findFirst()
                .orElse("A pack of " + material.name() + " has no volume, mass or length to divide this by.");
    }

    private String against(long packs, Material material) {
        int there = homestead.stock().stream()
                .filter(lot -> lot.material().equals(material.key()))
                .mapToInt(lot -> lot.packs())
                .sum();
        String need = packs + " × " + material.pack();
        if (there == 0) {
            return need + ", none on site.";
        }
        return there >= packs
                ? need + ", " + there + " on site: " + (there - packs) + " left for other stages."
                : need + ", " + there + " on site, " + (packs - there) + " to bring for all that uses it.";
    }

    /** The takeoff as it is to be kept; empty, with the field marked, when it has no name. */
    Optional<Takeoff> read(List<Given> given) {
        boolean unnamed = name.getValue().isBlank();
        name.setInvalid(unnamed);
        name.setErrorMessage("This is needed");
        if (unnamed) {
            return Optional.empty();
        }
        List<Supply> wanted = new ArrayList<>();
        materials.forEach((line, box) -> {
            if (box.getValue() != null) {
                wanted.add(new Supply(line, box.getValue()));
            }
        });
        String key = before == null ? newKey() : before.key();
        return Optional.of(new Takeoff(key, name.getValue().strip(), kind.key(), stage.getValue(), given, wanted));
    }

    private String newKey() {
        Set<String> taken = homestead.takeoffs().stream().map(Takeoff::key).collect(Collectors.toSet());
        return Keys.of(name.getValue(), "takeoff", taken);
    }
}
