package org.firmset.spend.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.firmset.homestead.file.Fault;
import org.firmset.spend.Receipt;
import org.firmset.spend.ReceiptRules;

/** Makes receipts of a table; changes nothing. */
public final class ReceiptImport {
    /** "line 3/lines/0/quantity": the row a receipt begins in, the line of it, the field. */
    private static final Pattern IN_RECEIPT = Pattern.compile("(line \\d+)(?:/lines/(\\d+))?(?:/(\\w+).*)?");

    /** Fields that people know by another name. */
    private static final Map<String, String> FIELDS =
            Map.of("unitPrice", "unit price", "deposit", "paid down", "restOn", "rest on");

    private final SpendTable table;
    private final ColumnMatch match;
    private final Ledger ledger;
    private final Numbers numbers;
    private final List<Fault> faults = new ArrayList<>();

    private ReceiptImport(SpendTable table, ColumnMatch match, Ledger ledger) {
        this.table = table;
        this.match = match;
        this.ledger = ledger;
        this.numbers = new Numbers(ledger.currency());
    }

    /** Which column may hold what, to begin with. */
    public static ColumnMatch guess(SpendTable table, String currency) {
        return ColumnGuess.of(table, new Numbers(currency));
    }

    /**
     * What the table would bring.
     *
     * @param match guessed, remembered or changed by people
     */
    public static ImportPreview preview(SpendTable table, ColumnMatch match, Ledger ledger) {
        return new ReceiptImport(table, match, ledger).preview();
    }

    private ImportPreview preview() {
        checkMatch();
        List<Receipt> receipts = List.of();
        if (faults.isEmpty()) {
            Optional<DateOrder> dates = dates();
            Map<Role, DecimalMark> marks = marks();
            if (faults.isEmpty() && dates.isPresent()) {
                receipts = receipts(told -> new RowReader(table, match, dates.get(), marks, numbers, told));
            }
        }
        return new ImportPreview(
                receipts,
                faults.stream().limit(Fault.MOST).toList(),
                Duplicate.among(ledger.receipts(), receipts),
                ledger.files().containsKey(table.file()));
    }

    private void checkMatch() {
        match.columns().forEach((role, column) -> {
            if (column >= table.headings().size()) {
                refuse(role.word(), "is in column " + (column + 1) + ", which is not there", "Say which column it is");
            }
        });
        if (match.column(Role.DATE).isEmpty()) {
            refuse("date", "is in no column", "Say which column holds the dates");
        }
        if (match.column(Role.SUPPLIER).isEmpty() && match.column(Role.TEXT).isEmpty()) {
            refuse("supplier", "is in no column", "Say which column tells who sold it, or what it was");
        }
        if (match.column(Role.AMOUNT).isEmpty() && match.column(Role.REFUND).isEmpty()) {
            refuse("amount", "is in no column", "Say which column holds what was paid");
        }
        if (table.rows().isEmpty()) {
            refuse("", "holds headings only", "Hand in a table with at least one receipt");
        }
    }

    private void refuse(String value, String problem, String remedy) {
        faults.add(new Fault("line 1", value, problem, remedy));
    }

    private Optional<DateOrder> dates() {
        return Optional.ofNullable(match.dates()).or(() -> DateColumn.order(dateCells(), faults));
    }

    /** Whoever wrote the table wrote the days of both columns alike: what is clear in one holds for the other. */
    private Iterable<Cell> dateCells() {
        return () -> Stream.of(Role.DATE, Role.REST_ON)
                .flatMap(role -> match.column(role).stream())
                .flatMap(this::cellsOf)
                .iterator();
    }

    private Map<Role, DecimalMark> marks() {
        Map<Role, DecimalMark> marks = new EnumMap<>(Role.class);
        match.columns().forEach((role, column) -> {
            if (role.holds() == Role.Holds.NUMBER) {
                Optional<DecimalMark> said = Optional.ofNullable(match.marks().get(role));
                said.or(() -> numbers.mark(cells(column), faults)).ifPresent(m -> marks.put(role, m));
            }
        });
        return marks;
    }

    private Iterable<Cell> cells(Integer column) {
        return () -> cellsOf(column).iterator();
    }

    private Stream<Cell> cellsOf(Integer column) {
        return table.rows().stream()
                .map(r -> table.cell(r, column))
                .filter(c -> !c.text().isEmpty());
    }

    /** Each row is read to see what is wrong and where it belongs, then each receipt is made; none of it is kept. */
    private List<Receipt> receipts(Function<List<Fault>, RowReader> readers) {
        Map<String, List<SpendTable.Row>> groups = groups(readers.apply(faults));
        ReceiptRules rules = new ReceiptRules(ledger.keys(), ledger.currency(), ledger.today());
        TableReceipts receipts = new TableReceipts(ledger.currency(), readers);
        groups.forEach((key, rows) -> {
            if (faults.size() < Fault.MOST) {
                TableReceipts.Group group = new TableReceipts.Group(key, rows);
                receipts.add(group, faults)
                        .ifPresent(receipt -> rules.faults(receipt, "line " + group.line())
                                .forEach(f -> faults.add(inTable(f, group.rows()))));
            }
        });
        return receipts;
    }

    /** Of a receipt each row is a line, so a fault of a line is one of its row. */
    private static Fault inTable(Fault fault, List<SpendTable.Row> rows) {
        Matcher place = IN_RECEIPT.matcher(fault.pointer());
        if (!place.matches()) {
            return fault;
        }
        String line = place.group(2) == null
                ? place.group(1)
                : "line " + rows.get(Integer.parseInt(place.group(2))).line();
        String field = place.group(3) == null ? "" : ", " + FIELDS.getOrDefault(place.group(3), place.group(3));
        return new Fault(line + field, fault.value(), fault.problem(), fault.remedy());
    }

    private Map<String, List<SpendTable.Row>> groups(RowReader reader) {
        Map<String, List<SpendTable.Row>> groups = new LinkedHashMap<>();
        boolean allNegative = true;
        for (SpendTable.Row row : table.rows()) {
            RowReader.Line line = reader.read(row);
            groups.computeIfAbsent(line.receipt(), r -> new ArrayList<>(1)).add(row);
            allNegative &= line.amount().isNegative();
            if (faults.size() >= Fault.MOST) {
                break;
            }
        }
        if (allNegative && groups.size() > 1) {
            checkMinuses();
        }
        return groups;
    }

    /** Statements of an account write what went out with a minus: ask rather than take all of it for refunds. */
    private void checkMinuses() {
        boolean asks = !match.outNegative()
                && match.column(Role.STATE).isEmpty()
                && match.column(Role.REFUND).isEmpty();
        if (asks) {
            faults.addFirst(new Fault(
                    "column '"
                            + match.column(Role.AMOUNT)
                                    .map(table.headings()::get)
                                    .orElse("") + "'",
                    "",
                    "holds nothing but negative amounts, as if everything had been given back",
                    "Say that money out is written with a minus"));
        }
    }
}
