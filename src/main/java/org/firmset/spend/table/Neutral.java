package org.firmset.spend.table;

/**
 * Cells that a spreadsheet would run as a formula: those beginning with = + - @, a tab or a return get an apostrophe in
 * front when written and lose it when read. So do those that begin with an apostrophe, or they would come back without.
 */
final class Neutral {
    private static final String STARTS = "=+-@\t\r\n'";

    private Neutral() {}

    static String of(String cell) {
        return !cell.isEmpty() && STARTS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }

    static String restore(String cell) {
        return cell.length() > 1 && cell.charAt(0) == '\'' && STARTS.indexOf(cell.charAt(1)) >= 0
                ? cell.substring(1)
                : cell;
    }
}
