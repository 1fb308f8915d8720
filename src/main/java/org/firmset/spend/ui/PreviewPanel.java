package org.firmset.spend.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.firmset.homestead.ui.FaultList;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.table.Duplicate;
import org.firmset.spend.table.ImportPreview;
import org.javamoney.moneta.Money;

/** What a table would bring: its faults, or its receipts with what may be there already for people to decide. */
final class PreviewPanel extends Div {
    private static final int SHOWN = 12;
    private static final int MOST_ASKED = 100;

    private final ImportPreview preview;
    private final String currency;
    private final Set<Integer> leftOut = new HashSet<>();
    private final Button take = new Button();

    PreviewPanel(ImportPreview preview, String currency, Consumer<List<Receipt>> taken) {
        this.preview = preview;
        this.currency = currency;
        add(new H2("What it would bring"));
        if (!preview.faults().isEmpty()) {
            FaultList faults = new FaultList();
            faults.show(
                    "Nothing can be taken until this is put right, here or in the table. All of it comes in or nothing.",
                    preview.faults());
            add(faults);
            return;
        }
        preview.duplicates().forEach(d -> leftOut.add(d.index()));
        addReceipts();
        addDuplicates();
        take.addThemeVariants(ButtonVariant.PRIMARY);
        take.addClickListener(e -> taken.accept(chosen()));
        add(take);
        showChosen();
    }

    private void addReceipts() {
        if (preview.sameFile()) {
            Paragraph same = new Paragraph("This very file was taken in before.");
            same.addClassName("fs-warning");
            add(same);
        }
        UnorderedList list = new UnorderedList();
        list.addClassName("fs-preview");
        preview.receipts().stream().limit(SHOWN).forEach(r -> list.add(new ListItem(words(r))));
        int more = preview.receipts().size() - SHOWN;
        if (more > 0) {
            list.add(new ListItem("and " + Count.of(more, "more receipt")));
        }
        add(list);
    }

    private static String words(Receipt receipt) {
        return receipt.date() + ", " + receipt.supplier() + ", "
                + receipt.lines().getFirst().text() + ", " + Figures.show(receipt.sum());
    }

    /** Each may be left out or taken as well; of very many all are left out together. */
    private void addDuplicates() {
        List<Duplicate> duplicates = preview.duplicates();
        if (duplicates.isEmpty()) {
            return;
        }
        add(new H2("May be there already"));
        add(new Paragraph(Count.of(duplicates.size(), "receipt")
                + " with the date, supplier and sum of another, or with its number or document. They are left out"
                + " unless you say that they were bought as well."));
        Div list = new Div();
        list.addClassName("fs-duplicates");
        duplicates.stream().limit(MOST_ASKED).forEach(d -> list.add(choice(d)));
        if (duplicates.size() > MOST_ASKED) {
            list.add(new Paragraph("and " + (duplicates.size() - MOST_ASKED) + " more, left out"));
        }
        add(list);
    }

    private Checkbox choice(Duplicate duplicate) {
        Receipt receipt = preview.receipts().get(duplicate.index());
        Checkbox box =
                new Checkbox("Take as well: " + words(receipt) + " (there already: " + words(duplicate.known()) + ")");
        box.addValueChangeListener(e -> {
            if (e.getValue()) {
                leftOut.remove(duplicate.index());
            } else {
                leftOut.add(duplicate.index());
            }
            showChosen();
        });
        return box;
    }

    private List<Receipt> chosen() {
        List<Receipt> all = preview.receipts();
        return IntStream.range(0, all.size())
                .filter(i -> !leftOut.contains(i))
                .mapToObj(all::get)
                .toList();
    }

    private void showChosen() {
        List<Receipt> chosen = chosen();
        Money sum = chosen.stream().map(Receipt::sum).reduce(Cash.ofCents(0, currency), Money::add);
        take.setText("Take in " + Count.of(chosen.size(), "receipt") + ", " + Figures.show(sum));
        take.setEnabled(!chosen.isEmpty());
    }
}
