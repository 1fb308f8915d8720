package org.firmset.season.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.ArrayList;
import java.util.List;

/** A row under another that tells how its figures were made, once one of them is opened. */
final class MadeRow extends NativeTableRow {
    private final Making making;
    private final int row;
    private final Unfolded unfolded;
    private final Div content = new Div();
    private final List<NativeButton> openers = new ArrayList<>();

    MadeRow(Making making, int row, int columns, Unfolded unfolded) {
        this.making = making;
        this.row = row;
        this.unfolded = unfolded;
        content.addClassName("fs-made");
        NativeTableCell cell = new NativeTableCell(content);
        cell.getElement().setAttribute("colspan", Integer.toString(columns));
        add(cell);
        show(unfolded.has(making.key(row)));
    }

    /** A figure that opens and closes this row. @param says what a reader hears who cannot see the table */
    NativeButton opener(String figure, String says) {
        NativeButton opener = new NativeButton(figure, e -> show(!isVisible()));
        opener.addClassName("fs-opens");
        opener.setAriaLabel(says);
        openers.add(opener);
        tell(opener);
        return opener;
    }

    private void show(boolean open) {
        unfolded.keep(making.key(row), open);
        if (open && content.getChildren().findAny().isEmpty()) {
            content.add(making.of(row));
        }
        setVisible(open);
        openers.forEach(this::tell);
    }

    private void tell(NativeButton opener) {
        opener.getElement().setAttribute("aria-expanded", Boolean.toString(isVisible()));
    }
}
