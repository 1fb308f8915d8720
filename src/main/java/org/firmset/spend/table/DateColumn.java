package org.firmset.spend.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.file.Fault;

/**
 * In which order a whole column writes its dates. One cell such as 17/10 settles it for all; when none does, people are
 * asked. Dates with points count as day first, as wherever they are customary.
 */
final class DateColumn {
    private static final String ASK = "Say which it is: year-first, month-first or day-first";

    private DateColumn() {}

    static Optional<DateOrder> order(Iterable<Cell> cells, List<Fault> faults) {
        Set<DateOrder> possible = EnumSet.allOf(DateOrder.class);
        boolean differs = false;
        Cell last = null;
        for (Cell cell : cells) {
            Set<DateOrder> its = possibleOf(cell.text());
            if (its.isEmpty()) {
                // told cell by cell when the rows are read
                continue;
            }
            Set<DateOrder> before = EnumSet.copyOf(possible);
            possible.retainAll(its);
            if (possible.isEmpty()) {
                faults.add(cell.fault(
                        "is no date in the order of those above it (" + words(before) + ")",
                        "Write all dates of the table alike, best as 2026-10-17"));
                return Optional.empty();
            }
            differs |= its.size() > 1 && meanings(cell.text(), its) > 1;
            last = cell;
        }
        if (possible.size() > 1 && differs && last != null) {
            faults.add(last.fault("can be " + words(possible) + ", and so can every date of this column", ASK));
            return Optional.empty();
        }
        return possible.stream().findFirst();
    }

    private static Set<DateOrder> possibleOf(String cell) {
        Set<DateOrder> orders = EnumSet.noneOf(DateOrder.class);
        for (DateOrder order : DateOrder.values()) {
            if (order.read(cell).isPresent() && !(order == DateOrder.MONTH_FIRST && cell.indexOf('.') >= 0)) {
                orders.add(order);
            }
        }
        return orders;
    }

    private static long meanings(String cell, Set<DateOrder> orders) {
        return orders.stream().map(o -> o.read(cell)).distinct().count();
    }

    private static String words(Set<DateOrder> orders) {
        List<String> words = new ArrayList<>();
        orders.forEach(o -> words.add(o.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        return words.stream().collect(Collectors.joining(" or "));
    }
}
