package org.firmset.spend.table;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;
import org.firmset.measure.Worded;
import org.firmset.spend.ContentHash;
import org.firmset.spend.LineKind;
import org.firmset.spend.ReceiptLine;
import org.firmset.spend.ReceiptState;
import org.javamoney.moneta.Money;

/** Reads the cells of one row; what is wrong goes to the faults and something harmless in its place. */
final class RowReader {
    private static final int LONGEST_TEXT = 500;
    private static final String DAY = "Write it such as 2026-10-17";
    private static final String COINS = "Write it to the cent";

    private final SpendTable table;
    private final ColumnMatch match;
    private final DateOrder dates;
    private final Map<Role, DecimalMark> marks;
    private final Numbers numbers;
    private final List<Fault> faults;

    RowReader(
            SpendTable table,
            ColumnMatch match,
            DateOrder dates,
            Map<Role, DecimalMark> marks,
            Numbers numbers,
            List<Fault> faults) {
        this.table = table;
        this.match = match;
        this.dates = dates;
        this.marks = marks;
        this.numbers = numbers;
        this.faults = faults;
    }

    /** A row as it was read; empty where its cell is. */
    record Line(
            long line,
            String receipt,
            Optional<LocalDate> date,
            String supplier,
            Optional<ReceiptState> state,
            ReceiptLine what,
            Optional<Money> tax,
            Optional<Money> discount,
            Optional<Money> deposit,
            Optional<LocalDate> restOn,
            Optional<Money> total,
            Optional<ContentHash> document) {
        Money amount() {
            return what.amount();
        }
    }

    Line read(SpendTable.Row row) {
        Optional<ReceiptState> state = worded(row, Role.STATE, ReceiptState.values());
        Money amount = amount(row, state);
        boolean back = amount.isNegative() || state.equals(Optional.of(ReceiptState.RETURNED));
        String supplier = text(row, Role.SUPPLIER);
        String text = text(row, Role.TEXT);
        String material = text(row, Role.MATERIAL);
        ReceiptLine what = new ReceiptLine(
                worded(row, Role.KIND, LineKind.values())
                        .orElse(material.isEmpty() ? LineKind.OTHER : LineKind.MATERIAL),
                text.isEmpty() ? supplier : text,
                material.isEmpty() ? null : material,
                quantity(row, back),
                money(row, Role.UNIT_PRICE).map(Money::abs).orElse(null),
                amount,
                ShareText.read(cell(row, Role.SHARES), faults));
        return new Line(
                row.line(),
                receipt(row),
                date(row),
                supplier.isEmpty() ? text : supplier,
                state,
                what,
                money(row, Role.TAX),
                money(row, Role.DISCOUNT),
                money(row, Role.DEPOSIT),
                restOn(row),
                money(row, Role.TOTAL),
                document(row));
    }

    private Cell cell(SpendTable.Row row, Role role) {
        return match.column(role).map(c -> table.cell(row, c)).orElse(new Cell(row.line(), role.word(), ""));
    }

    private String receipt(SpendTable.Row row) {
        String written = text(row, Role.RECEIPT);
        return written.isEmpty() ? table.file().hex().substring(0, 8) + "-" + row.line() : written;
    }

    private String text(SpendTable.Row row, Role role) {
        Cell cell = cell(row, role);
        if (cell.text().length() > LONGEST_TEXT) {
            refuse(cell, "is longer than " + LONGEST_TEXT + " characters", "Shorten it");
        }
        return cell.text();
    }

    private Optional<LocalDate> date(SpendTable.Row row) {
        Cell cell = cell(row, Role.DATE);
        Optional<LocalDate> date = dates.read(cell.text());
        if (date.isEmpty()) {
            refuse(cell, cell.text().isEmpty() ? "holds no date" : "is no date", DAY);
        }
        return date;
    }

    private Optional<LocalDate> restOn(SpendTable.Row row) {
        Cell cell = cell(row, Role.REST_ON);
        Optional<LocalDate> date = dates.read(cell.text());
        if (date.isEmpty() && !cell.text().isEmpty()) {
            refuse(cell, "is no date", DAY);
        }
        return date;
    }

    private Money amount(SpendTable.Row row, Optional<ReceiptState> state) {
        Optional<Money> paid = money(row, Role.AMOUNT).map(m -> match.outNegative() ? m.negate() : m);
        Optional<Money> back = money(row, Role.REFUND).map(m -> m.abs().negate());
        if (paid.isPresent()
                && back.isPresent()
                && !paid.get().isZero()
                && !back.get().isZero()) {
            refuse(cell(row, Role.REFUND), "stands beside an amount that was paid", "Write two rows");
        }
        if (paid.isEmpty() && back.isEmpty()) {
            refuse(cell(row, Role.AMOUNT), "holds no amount", "Write what was paid, 0.00 for nothing");
        }
        Money amount =
                back.filter(m -> paid.isEmpty() || !m.isZero()).or(() -> paid).orElse(zero());
        return state.equals(Optional.of(ReceiptState.RETURNED)) ? amount.abs().negate() : amount;
    }

    private Money zero() {
        return Cash.ofCents(0, numbers.currency());
    }

    private BigDecimal quantity(SpendTable.Row row, boolean back) {
        BigDecimal quantity = number(row, Role.QUANTITY).orElse(BigDecimal.ONE);
        return back ? quantity.abs().negate() : quantity;
    }

    private Optional<Money> money(SpendTable.Row row, Role role) {
        Optional<BigDecimal> number = number(row, role);
        if (number.isPresent() && number.get().stripTrailingZeros().scale() > 2) {
            refuse(cell(row, role), "is finer than a cent", COINS);
            return Optional.empty();
        }
        return number.map(n -> Cash.of(n, numbers.currency()));
    }

    private Optional<BigDecimal> number(SpendTable.Row row, Role role) {
        Cell cell = cell(row, role);
        if (cell.text().isEmpty()) {
            return Optional.empty();
        }
        DecimalMark mark = marks.getOrDefault(role, DecimalMark.POINT);
        Optional<BigDecimal> number = numbers.read(cell.text(), mark);
        if (number.isEmpty()) {
            refuse(cell, "is no number here", "Write it such as 1240" + mark.mark + "50, in " + numbers.currency());
        }
        return number;
    }

    private <E extends Enum<E> & Worded> Optional<E> worded(SpendTable.Row row, Role role, E[] all) {
        Cell cell = cell(row, role);
        for (E one : all) {
            if (one.words().equalsIgnoreCase(cell.text())) {
                return Optional.of(one);
            }
        }
        if (!cell.text().isEmpty()) {
            refuse(
                    cell,
                    "is no " + role.word() + " of a purchase",
                    "Write one of " + words(all) + ", or leave this column out");
        }
        return Optional.empty();
    }

    private static String words(Worded[] all) {
        return String.join(", ", Arrays.stream(all).map(Worded::words).toList());
    }

    private Optional<ContentHash> document(SpendTable.Row row) {
        Cell cell = cell(row, Role.DOCUMENT);
        if (cell.text().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new ContentHash(cell.text()));
        } catch (IllegalArgumentException e) {
            refuse(cell, "names no photo or paper as an export does", "Leave it empty; a photo is handed in by itself");
            return Optional.empty();
        }
    }

    private void refuse(Cell cell, String problem, String remedy) {
        faults.add(cell.fault(problem, remedy));
    }
}
