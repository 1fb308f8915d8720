package org.firmset.homestead.takeoff;

/**
 * An input of a takeoff that cannot be accepted.
 *
 * @param input its name; empty when no single input is to blame
 * @param value what was written
 */
public record InputFault(String input, String value, String problem, String remedy) {
    private static final int LONGEST_VALUE = 80;

    public InputFault {
        value = value.length() > LONGEST_VALUE ? value.substring(0, LONGEST_VALUE) + "..." : value;
    }

    /** All of it in one line. */
    public String line() {
        return (input + (value.isEmpty() ? "" : " [" + value + "]") + " " + problem + ". " + remedy + ".")
                .strip()
                .replaceAll("\\p{Cntrl}", "?");
    }
}
