package org.firmset.spend.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.UploadEvent;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.ui.FaultList;
import org.firmset.homestead.ui.OpenedPage;
import org.firmset.homestead.ui.RefusedFiles;
import org.firmset.shell.Frame;
import org.firmset.spend.Receipt;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.store.ReceiptBook.Outcome;
import org.firmset.spend.table.ColumnMatch;
import org.firmset.spend.table.Ledger;
import org.firmset.spend.table.ReceiptImport;
import org.firmset.spend.table.SpendTable;
import org.firmset.spend.table.TableReader;

/** Brings receipts in from a table: which column is what, what would come of it, and then all of it or nothing. */
@Route(value = SpendPages.IMPORT, layout = Frame.class)
@PageTitle("Firmset: bring a table")
class ImportView extends OpenedPage {
    private final ReceiptBook book;
    private final FaultList faults = new FaultList();
    private final Div steps = new Div();

    ImportView(Homesteads homesteads, ReceiptBook book) {
        super(homesteads, "fs-spend");
        this.book = book;
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        faults.clear();
        steps.removeAll();
        add(
                new H1("Bring a table"),
                new Anchor(SpendPages.RECEIPTS, "All receipts"),
                new Paragraph(
                        "Receipts as comma-separated text, from a spreadsheet, a bank or an export of these pages."
                                + " The first row holds headings. At most " + (TableReader.MOST_BYTES >> 20)
                                + " MiB and "
                                + "%,d lines.".formatted(TableReader.MOST_LINES)),
                upload(kept),
                faults,
                steps);
    }

    private Upload upload(Kept kept) {
        Upload upload = new Upload();
        upload.setUploadHandler(event -> read(event, upload, kept));
        upload.setAcceptedMimeTypes("text/csv", "text/plain", "text/tab-separated-values");
        upload.setAcceptedFileExtensions(".csv", ".txt", ".tsv");
        upload.setMaxFileSize(TableReader.MOST_BYTES);
        upload.setUploadButton(new Button("Choose a table"));
        upload.setDropLabel(new Span("or drop it here"));
        RefusedFiles.tell(upload, faults);
        return upload;
    }

    /** Runs beside the page: only what came of it is shown there. */
    private void read(UploadEvent event, Upload upload, Kept kept) throws IOException {
        TableReader.Read read = TableReader.read(event.getInputStream());
        UI ui = event.getUI();
        ui.access(() -> {
            upload.clearFileList();
            show(read, kept);
        });
    }

    void show(TableReader.Read read, Kept kept) {
        faults.clear();
        steps.removeAll();
        read.table()
                .ifPresentOrElse(
                        table -> match(table, kept),
                        () -> faults.show("The table cannot be read; nothing was changed.", read.faults()));
    }

    private void match(SpendTable table, Kept kept) {
        Ledger ledger = book.ledger(kept.id());
        ColumnMatch begin = book.match(kept.id(), table.fingerprint())
                .orElseGet(() -> ReceiptImport.guess(table, ledger.currency()));
        Div preview = new Div();
        MatchForm form = new MatchForm(table, begin, match -> preview(table, match, ledger, kept.id(), preview));
        steps.add(form, preview);
        preview(table, begin, ledger, kept.id(), preview);
    }

    private void preview(SpendTable table, ColumnMatch match, Ledger ledger, UUID homestead, Div place) {
        place.removeAll();
        place.add(new PreviewPanel(ReceiptImport.preview(table, match, ledger), ledger.currency(), chosen -> {
            book.remember(homestead, table.fingerprint(), match);
            take(homestead, table, chosen, ledger);
        }));
    }

    private void take(UUID homestead, SpendTable table, List<Receipt> receipts, Ledger looked) {
        switch (book.takeAll(homestead, receipts, table.file(), looked.files())) {
            case Outcome.Stored stored -> {
                steps.removeAll();
                Paragraph done = new Paragraph(Count.of(receipts.size(), "receipt") + " taken in.");
                done.getElement().setAttribute("role", "status");
                steps.add(done, new Anchor(SpendPages.RECEIPTS, "See them among all receipts"));
            }
            case Outcome.Refused refused -> faults.show("Nothing was taken.", refused.faults());
            case Outcome.Outdated outdated -> faults.show(outdated.message());
        }
    }
}
