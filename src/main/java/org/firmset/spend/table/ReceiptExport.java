package org.firmset.spend.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.firmset.measure.Cash;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;

/**
 * Receipts as a table that {@link ReceiptImport} reads back to the same receipts: one row a line, commas, CRLF, quotes
 * doubled (RFC 4180), no cell that a spreadsheet would run. What came back stands in a column of its own and without a
 * minus, so that no number begins with one.
 */
public final class ReceiptExport {
    static final List<String> HEADINGS = List.of(
            "Receipt",
            "Date",
            "Supplier",
            "State",
            "Kind",
            "Text",
            "Material",
            "Quantity",
            "Unit price",
            "Amount",
            "Refund",
            "Tax",
            "Discount",
            "Paid down",
            "Rest on",
            "Total",
            "Shares",
            "Document");

    private final CSVPrinter printer;

    /**
     * Begins a table with its headings.
     *
     * @param out is neither flushed nor closed
     * @throws UncheckedIOException when it cannot be written to, like all that is added
     */
    public ReceiptExport(Appendable out) {
        try {
            printer = new CSVPrinter(out, CSVFormat.RFC4180);
            printer.printRecord(HEADINGS);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All of them at once. */
    public static String write(List<Receipt> receipts) {
        StringBuilder out = new StringBuilder();
        ReceiptExport export = new ReceiptExport(out);
        receipts.forEach(export::add);
        return out.toString();
    }

    /** The rows of one more receipt. */
    public void add(Receipt receipt) {
        try {
            for (int i = 0; i < receipt.lines().size(); i++) {
                printer.printRecord(row(receipt, receipt.lines().get(i), i == 0).stream()
                        .map(Neutral::of)
                        .toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> row(Receipt receipt, ReceiptLine line, boolean isFirst) {
        boolean back = receipt.state() == ReceiptState.RETURNED;
        List<String> cells = new ArrayList<>(List.of(
                receipt.key(),
                receipt.date().toString(),
                receipt.supplier(),
                receipt.state().words(),
                line.kind().words(),
                line.text(),
                orEmpty(line.material()),
                Numbers.written(line.quantity().abs()),
                amount(line.unitPrice()),
                back ? "" : amount(line.amount()),
                back ? amount(line.amount()) : ""));
        cells.addAll(
                isFirst
                        ? List.of(
                                amount(receipt.tax()),
                                amount(receipt.discount()),
                                paidDown(receipt),
                                receipt.restOn() == null ? "" : receipt.restOn().toString(),
                                amount(receipt.total()))
                        : List.of("", "", "", "", ""));
        cells.add(ShareText.of(line.shares()));
        cells.add(isFirst && receipt.document() != null ? receipt.document().hex() : "");
        return cells;
    }

    private static String paidDown(Receipt receipt) {
        return receipt.state() == ReceiptState.ORDERED || receipt.restOn() != null ? amount(receipt.deposit()) : "";
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static String amount(@Nullable Money money) {
        return money == null ? "" : Cash.amountOf(money).abs().toPlainString();
    }
}
