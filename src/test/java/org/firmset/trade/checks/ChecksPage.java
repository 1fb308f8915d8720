package org.firmset.trade.checks;

import java.util.List;

/** Writes the list of checks as a page for people. */
final class ChecksPage {
    private ChecksPage() {}

    static String write(List<Row> rows) {
        StringBuilder page = new StringBuilder("""
                # Published values beside computed ones

                Made by the tests (`PublishedChecksTest`); every line is one of them. "verified" means that the value, or the
                formula and the inputs it follows from, was seen in the source named; "memory" that it is quoted from memory of
                it. A memory value that contradicts warns and does not fail.

                | row | quantity | value | expected | tolerance | computed | source | known |
                |---|---|---|---|---|---|---|---|
                """);
        for (Row row : rows) {
            for (Check check : row.checks()) {
                page.append(line(check));
            }
        }
        long values = rows.stream().mapToLong(r -> r.checks().size()).sum();
        return page.append("\n%d rows, %d values.%n".formatted(rows.size(), values))
                .toString();
    }

    private static String line(Check check) {
        Row row = check.row();
        return "| %s | %s | %s | %s | %s | %s | %s | %s |\n"
                .formatted(
                        row.id(),
                        row.quantity(),
                        check.what(),
                        check.plain(check.expected()),
                        check.tolerance() == 0 ? "exact" : check.plain(check.tolerance()),
                        check.plain(check.computed().getAsDouble()),
                        row.source(),
                        row.known());
    }
}
