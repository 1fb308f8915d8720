package org.firmset.spend.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds what stands between the cells: of comma, semicolon and tab the one that most of the first rows hold as often as
 * the headings do, outside of quotes; among equals the one that makes more columns.
 */
final class Separators {
    private static final char[] KNOWN = {',', ';', '\t'};
    private static final int LOOKED_AT = 30;

    private Separators() {}

    /** Empty when the headings hold none. */
    static Optional<Character> of(String text) {
        List<String> rows = rows(text);
        Optional<Character> best = Optional.empty();
        double bestScore = 0;
        for (char separator : KNOWN) {
            long inHeadings = count(rows.getFirst(), separator);
            double alike = (double) rows.stream()
                            .filter(r -> count(r, separator) == inHeadings)
                            .count()
                    / rows.size();
            // columns decide only among those that are equally alike
            double score = inHeadings == 0 ? 0 : alike + Math.min(inHeadings, 200) / 1e6;
            if (score > bestScore) {
                bestScore = score;
                best = Optional.of(separator);
            }
        }
        return best;
    }

    private static List<String> rows(String text) {
        List<String> rows = new ArrayList<>();
        boolean quoted = false;
        int start = 0;
        for (int i = 0; i < text.length() && rows.size() < LOOKED_AT; i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (!quoted && (c == '\n' || c == '\r')) {
                add(rows, text.substring(start, i));
                start = i + 1;
            }
        }
        if (rows.size() < LOOKED_AT) {
            add(rows, text.substring(start));
        }
        return rows.isEmpty() ? List.of("") : rows;
    }

    private static void add(List<String> rows, String row) {
        if (!row.isBlank()) {
            rows.add(row);
        }
    }

    private static long count(String row, char separator) {
        boolean quoted = false;
        long count = 0;
        for (int i = 0; i < row.length(); i++) {
            char c = row.charAt(i);
            quoted ^= c == '"';
            count += !quoted && c == separator ? 1 : 0;
        }
        return count;
    }
}
