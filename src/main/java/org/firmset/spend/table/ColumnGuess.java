package org.firmset.spend.table;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Guesses which column holds what: first by the headings, then, for what a receipt cannot do without, by the contents of
 * the columns that are left.
 */
final class ColumnGuess {
    private static final int LOOKED_AT = 50;

    private final SpendTable table;
    private final Numbers numbers;
    private final Map<Role, Integer> columns = new EnumMap<>(Role.class);

    private ColumnGuess(SpendTable table, Numbers numbers) {
        this.table = table;
        this.numbers = numbers;
    }

    static ColumnMatch of(SpendTable table, Numbers numbers) {
        ColumnGuess guess = new ColumnGuess(table, numbers);
        for (Role role : Role.values()) {
            guess.byHeading(role);
        }
        guess.byContents(Role.DATE, ColumnGuess::isDate, false);
        if (!guess.columns.containsKey(Role.REFUND)) {
            guess.totalAsAmount();
            guess.byContents(Role.AMOUNT, cell -> guess.isMoney(cell), true);
        }
        guess.byContents(Role.SUPPLIER, cell -> guess.isWords(cell), false);
        guess.byContents(Role.TEXT, cell -> guess.isWords(cell), false);
        return new ColumnMatch(guess.columns, null, Map.of(), false);
    }

    private void byHeading(Role role) {
        IntStream.range(0, table.headings().size())
                .filter(c -> !columns.containsValue(c)
                        && role.isMeantBy(table.headings().get(c)))
                .findFirst()
                .ifPresent(c -> columns.put(role, c));
    }

    /** A lone 'Total' is what was paid for the row. */
    private void totalAsAmount() {
        Integer total = columns.get(Role.TOTAL);
        if (!columns.containsKey(Role.AMOUNT) && total != null) {
            columns.remove(Role.TOTAL);
            columns.put(Role.AMOUNT, total);
        }
    }

    private void byContents(Role role, Predicate<String> fits, boolean fromRight) {
        if (columns.containsKey(role)) {
            return;
        }
        int count = table.headings().size();
        Optional<Integer> found = IntStream.range(0, count)
                .map(i -> fromRight ? count - 1 - i : i)
                .boxed()
                .filter(c -> !columns.containsValue(c) && holds(c, fits))
                .findFirst();
        found.ifPresent(c -> columns.put(role, c));
    }

    private boolean holds(int column, Predicate<String> fits) {
        List<String> cells = table.rows().stream()
                .limit(LOOKED_AT)
                .map(r -> r.cells().get(column))
                .filter(c -> !c.isEmpty())
                .toList();
        return !cells.isEmpty() && cells.stream().allMatch(fits);
    }

    private static boolean isDate(String cell) {
        for (DateOrder order : DateOrder.values()) {
            if (order.read(cell).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private boolean isMoney(String cell) {
        return numbers.looksLike(cell) && cell.matches(".*[.,]\\d{2}(?!\\d).*");
    }

    private boolean isWords(String cell) {
        return !isDate(cell) && !numbers.looksLike(cell);
    }
}
