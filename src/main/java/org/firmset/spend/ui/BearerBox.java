package org.firmset.spend.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.spend.ui.Bearers.Bearer;
import org.jspecify.annotations.Nullable;

/** The field in which people say who bears a cost; a part of a name is enough. */
final class BearerBox {
    private BearerBox() {}

    /** @param chosen offered as well, also when it was removed from the homestead; null for none */
    static ComboBox<Bearer> of(Bearers bearers, @Nullable Bearer chosen) {
        ComboBox<Bearer> box = new ComboBox<>("For");
        List<Bearer> offered = Stream.concat(bearers.all().stream(), Stream.ofNullable(chosen))
                .distinct()
                .toList();
        box.setItems(offered);
        box.setItemLabelGenerator(bearers::words);
        TypedChoice.allow(box, offered, bearers::words);
        box.setClearButtonVisible(true);
        box.setPlaceholder("not said yet");
        if (chosen != null) {
            box.setValue(chosen);
        }
        return box;
    }
}
