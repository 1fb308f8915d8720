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
import org.firmset.homestead.ui.FaultList;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.table.Duplicate;
import org.firmset.spend.table.ImportPreview;
import org.firmset.spend.table.KnownReceipt;

/** What a table would bring: its faults, or its receipts with what may be there already for people to decide. */
final class PreviewPanel extends Div {
    private static final int SHOWN = 12;
    private static final int MOST_ASKED = 100;

    private final ImportPreview preview;
    private final String currency;
    private final Set<Integer> leftOut = new HashSet<>();
    private final Button take = new Button();
    private long chosenCents;

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
        preview.without(leftOut).forEach(r -> chosenCents += Cash.cents(r.sum()));
        addReceipts();
        addDuplicates();
        take.addThemeVariants(ButtonVariant.PRIMARY);
        take.addClickListener(e -> taken.accept(preview.without(leftOut)));
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
        preview.receipts().stream().limit(SHOWN).forEach(r -> list.add(new ListItem(words(KnownReceipt.of(r)))));
        int more = preview.receipts().size() - SHOWN;
        if (more > 0) {
            list.add(new ListItem("and " + Count.of(more, "more receipt")));
        }
        add(list);
    }

    private String words(KnownReceipt receipt) {
        return receipt.date() + ", " + receipt.supplier() + ", " + receipt.text() + ", "
                + Cash.show(receipt.sumCents(), currency);
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
        KnownReceipt receipt = KnownReceipt.of(preview.receipts().get(duplicate.index()));
        Checkbox box =
                new Checkbox("Take as well: " + words(receipt) + " (there already: " + words(duplicate.known()) + ")");
        box.addValueChangeListener(e -> {
            if (e.getValue()) {
                leftOut.remove(duplicate.index());
                chosenCents += receipt.sumCents();
            } else {
                leftOut.add(duplicate.index());
                chosenCents -= receipt.sumCents();
            }
            showChosen();
        });
        return box;
    }

    private void showChosen() {
        int chosen = preview.receipts().size() - leftOut.size();
        take.setText("Take in " + Count.of(chosen, "receipt") + ", " + Cash.show(chosenCents, currency));
        take.setEnabled(chosen > 0);
    }
}
