package org.firmset.season.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.firmset.homestead.Material;
import org.firmset.season.money.Coming;
import org.firmset.season.money.MoneyReport;
import org.firmset.season.money.Purpose;
import org.firmset.season.money.ThingWords;

/** What a rise of prices does to the sum at the finish. */
final class RisePanel extends Div {
    private static final String ALL = "";

    private MoneyReport money;
    private List<String> toBuy = List.of();
    private final TextField percent = new TextField("A rise of, in percent");
    private final Select<String> what = new Select<>();
    private final Paragraph answer = new Paragraph();

    RisePanel(MoneyReport money) {
        this.money = money;
        addClassNames("fs-ask", "fs-no-print");
        answer.getElement().setAttribute("role", "status");
        answer.getElement().setAttribute("aria-live", "polite");
        what.setLabel("On");
        what.setItemLabelGenerator(this::name);
        choose(ALL);
        what.addValueChangeListener(e -> tell());
        percent.setValue("8");
        percent.setValueChangeMode(ValueChangeMode.LAZY);
        percent.addValueChangeListener(e -> tell());
        Div fields = new Div(percent, what);
        fields.addClassName("fs-asking");
        add(fields, answer);
        show(money);
    }

    /** Answers for other sums; what was typed and chosen stays as long as it is there. */
    void show(MoneyReport other) {
        money = other;
        List<String> now = other.coming().stream()
                .filter(c -> c.purpose() == Purpose.PACKS)
                .map(Coming::what)
                .distinct()
                .toList();
        if (!now.equals(toBuy)) {
            String chosen = what.getValue();
            toBuy = now;
            choose(now.contains(chosen) ? chosen : ALL);
        }
        tell();
    }

    private void choose(String value) {
        what.setItems(Stream.concat(Stream.of(ALL), toBuy.stream()).toList());
        what.setValue(value);
    }

    private String name(String key) {
        return money.homestead().materials().stream()
                .filter(m -> m.key().equals(key))
                .map(Material::name)
                .findFirst()
                .orElse("all packs");
    }

    private void tell() {
        String text = percent.getValue().strip();
        boolean fits = text.matches("-?\\d{1,4}([.,]\\d{1,3})?");
        percent.setInvalid(!fits);
        percent.setErrorMessage("Write a number such as 8 or -2.5");
        if (!fits) {
            // what stood there was of another number
            answer.setText("");
        } else {
            String key = what.getValue();
            answer.setText(new ThingWords(money)
                    .rise(key == null || ALL.equals(key) ? null : key, new BigDecimal(text.replace(',', '.'))));
        }
    }
}
