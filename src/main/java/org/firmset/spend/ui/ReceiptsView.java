package org.firmset.spend.ui;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.DownloadEvent;
import com.vaadin.flow.server.streams.DownloadHandler;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.util.UUID;
import org.firmset.homestead.store.Homesteads;
import org.firmset.homestead.store.Kept;
import org.firmset.homestead.ui.OpenedPage;
import org.firmset.shell.Frame;
import org.firmset.spend.FinishedWork;
import org.firmset.spend.ReceiptFilter;
import org.firmset.spend.Selected;
import org.firmset.spend.store.ReceiptBook;
import org.firmset.spend.table.ReceiptExport;

/** All receipts, or those of one figure, by month; what they come to. */
@Route(value = SpendPages.RECEIPTS, layout = Frame.class)
@PageTitle("Firmset: receipts")
class ReceiptsView extends OpenedPage {
    private final ReceiptBook book;

    ReceiptsView(Homesteads homesteads, ReceiptBook book) {
        super(homesteads, "fs-spend");
        this.book = book;
    }

    @Override
    protected void show(Kept kept, BeforeEnterEvent event) {
        ReceiptFilter filter = SpendPages.filter(
                event.getLocation().getQueryParameters()::getSingleParameter,
                FinishedWork.of(kept.homestead()).keySet());
        String currency = kept.homestead().currency();
        Bearers bearers = new Bearers(kept.homestead());
        Listing listing = Listing.of(book, kept.id(), filter);
        add(new H1("Receipts"), ways(kept.id()));
        if (listing.isOfNothing()) {
            add(new Paragraph("Nothing has been entered yet. A receipt takes less than a minute; a table of older ones"
                    + " can be brought in whole."));
            return;
        }
        add(new FilterBar(kept.homestead(), bearers, listing.written(), filter));
        add(sums(listing, currency), new ReceiptList(listing.listed(), ids -> book.some(kept.id(), ids), bearers));
    }

    private Div ways(UUID homestead) {
        Anchor enter = new Anchor(SpendPages.newReceipt(), "Enter a receipt");
        enter.addClassName("fs-first-way");
        Anchor export = new Anchor((DownloadHandler) event -> export(homestead, event), "Export all as a table");
        Div ways = new Div(
                enter,
                new Anchor(SpendPages.TRIP, "Write down a trip"),
                new Anchor(SpendPages.IMPORT, "Bring a table"),
                export,
                new Anchor(SpendPages.OVERVIEW, "Where the money stands"));
        ways.addClassName("fs-buttons");
        return ways;
    }

    private void export(UUID homestead, DownloadEvent event) throws IOException {
        event.setFileName("receipts.csv");
        event.setContentType("text/csv;charset=utf-8");
        write(homestead, event.getOutputStream());
    }

    /** Line by line, so that the table of many years needs no more memory than that of one. */
    void write(UUID homestead, OutputStream to) throws IOException {
        try (Writer out = new BufferedWriter(new OutputStreamWriter(to, UTF_8))) {
            ReceiptExport export = new ReceiptExport(out);
            book.eachAtLeisure(homestead, kept -> export.add(kept.receipt()));
        }
    }

    private static Div sums(Listing listing, String currency) {
        Selected sum = listing.sum(currency);
        Div figures = new Div(
                Figures.figure("Spent", sum.spent()),
                Figures.figure("On order, still to pay", sum.committed()),
                Figures.figure("Deposits that come back", sum.heldBack()),
                Figures.figure("Receipts", Long.toString(listing.receipts())));
        figures.addClassName("fs-figures");
        figures.getElement().setAttribute("role", "status");
        return figures;
    }
}
