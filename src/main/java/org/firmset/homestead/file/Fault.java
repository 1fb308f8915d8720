package org.firmset.homestead.file;

/**
 * Something in a homestead file, or in another file or record that people hand in, that cannot be accepted.
 *
 * @param pointer where, as a JSON pointer (RFC 6901), in a table as line and column; empty for the whole document
 * @param value what stands there, shortened
 * @param problem what is wrong with it
 * @param remedy what to write instead
 */
public record Fault(String pointer, String value, String problem, String remedy) {
    /** Enough to see what is wrong; a hostile file gets no more. */
    public static final int MOST = 50;

    private static final int LONGEST_VALUE = 80;

    public Fault {
        value = value.length() > LONGEST_VALUE ? value.substring(0, LONGEST_VALUE) + "..." : value;
    }

    /** All of it in one line, the place first, without what a screen could take for a command. */
    public String line() {
        String where = pointer.isEmpty() ? "The file" : pointer;
        String what = value.isEmpty() ? "" : " [" + value + "]";
        return (where + what + " " + problem + ". " + remedy + ".").replaceAll("\\p{Cntrl}", "?");
    }
}
