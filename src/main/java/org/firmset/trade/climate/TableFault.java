package org.firmset.trade.climate;

/**
 * Something in a table or list that cannot be accepted.
 *
 * @param line counted from 1, the header included where there is one; 0 for the whole
 * @param column its name, empty for the whole line
 * @param value what stands there, shortened; may be empty
 * @param problem goes on after the value: "is not a number"
 * @param remedy what to write instead
 */
public record TableFault(int line, String column, String value, String problem, String remedy) {
    private static final int LONGEST = 60;

    public TableFault {
        value = value.length() > LONGEST ? value.substring(0, LONGEST) + "..." : value;
    }

    /** All in one line: "Line 3, wet_days [32] is over the 31 days of the month. Write at most 31." */
    public String text() {
        String where = line == 0 ? "The table" : "Line " + line;
        String what = (column.isEmpty() ? "" : ", " + column) + (value.isEmpty() ? "" : " [" + value + "]");
        return (where + what + " " + problem + ". " + remedy + ".").replaceAll("\\p{Cntrl}", "?");
    }
}
