package org.firmset.spend.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.firmset.spend.table.ColumnMatch;
import org.firmset.spend.table.DateOrder;
import org.firmset.spend.table.DecimalMark;
import org.firmset.spend.table.Role;
import org.firmset.spend.table.SpendTable;
import org.jspecify.annotations.Nullable;

/** Which column of a table holds what, and how its dates and numbers are written. */
final class MatchForm extends Div {
    private static final Set<Role> MOSTLY_THERE =
            EnumSet.of(Role.DATE, Role.SUPPLIER, Role.TEXT, Role.AMOUNT, Role.REFUND, Role.SHARES);

    private static final List<Role> NUMBERS =
            Arrays.stream(Role.values()).filter(Role::isNumber).toList();

    private final SpendTable table;
    private final Consumer<ColumnMatch> changed;
    private ColumnMatch match;

    MatchForm(SpendTable table, ColumnMatch begin, Consumer<ColumnMatch> changed) {
        this.table = table;
        this.match = begin;
        this.changed = changed;
        Div usual = new Div();
        usual.addClassName("fs-form");
        Div others = new Div();
        others.addClassName("fs-form");
        for (Role role : Role.values()) {
            (MOSTLY_THERE.contains(role) ? usual : others).add(column(role));
        }
        usual.add(dates(), decimals(), minus());
        add(new H2("Which column is what"), usual, new Details("More columns", others));
    }

    private void change(ColumnMatch to) {
        match = to;
        changed.accept(to);
    }

    private ComboBox<Integer> column(Role role) {
        ComboBox<Integer> box = new ComboBox<>(capital(role.words()));
        List<Integer> columns =
                IntStream.range(0, table.headings().size()).boxed().toList();
        box.setItems(columns);
        box.setItemLabelGenerator(this::heading);
        box.setClearButtonVisible(true);
        box.setPlaceholder("no column");
        box.setValue(match.column(role).filter(columns::contains).orElse(null));
        box.setHelperText(example(box.getValue()));
        box.addValueChangeListener(e -> {
            box.setHelperText(example(e.getValue()));
            change(match.with(role, e.getValue()));
        });
        return box;
    }

    private String heading(Integer column) {
        String heading = table.headings().get(column);
        return heading.isEmpty() ? "column " + (column + 1) : heading;
    }

    private String example(@Nullable Integer column) {
        if (column == null) {
            return "";
        }
        return table.rows().stream()
                .map(r -> r.cells().get(column))
                .filter(c -> !c.isEmpty())
                .findFirst()
                .map(c -> "such as " + (c.length() > 30 ? c.substring(0, 30) + "..." : c))
                .orElse("empty");
    }

    private ComboBox<DateOrder> dates() {
        ComboBox<DateOrder> box = new ComboBox<>("Order of dates");
        box.setItems(DateOrder.values());
        box.setItemLabelGenerator(o -> o.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        box.setClearButtonVisible(true);
        box.setPlaceholder("as the column shows");
        box.setValue(match.dates());
        box.addValueChangeListener(e -> change(
                e.getValue() == null
                        ? new ColumnMatch(match.columns(), null, match.marks(), match.outNegative())
                        : match.with(e.getValue())));
        return box;
    }

    private ComboBox<DecimalMark> decimals() {
        ComboBox<DecimalMark> box = new ComboBox<>("Cents stand behind a");
        box.setItems(DecimalMark.values());
        box.setItemLabelGenerator(m -> m.name().toLowerCase(Locale.ROOT));
        box.setClearButtonVisible(true);
        box.setPlaceholder("as the columns show");
        box.setValue(match.marks().values().stream().findFirst().orElse(null));
        box.addValueChangeListener(e -> {
            ColumnMatch marked = new ColumnMatch(match.columns(), match.dates(), Map.of(), match.outNegative());
            if (e.getValue() != null) {
                for (Role role : NUMBERS) {
                    marked = marked.with(role, e.getValue());
                }
            }
            change(marked);
        });
        return box;
    }

    private Checkbox minus() {
        Checkbox box = new Checkbox("Money out is written with a minus", match.outNegative());
        box.addValueChangeListener(e -> change(match.withOutNegative(e.getValue())));
        return box;
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
