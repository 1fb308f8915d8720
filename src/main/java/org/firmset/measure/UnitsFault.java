package org.firmset.measure;

/** A text that is no quantity or amount of money; the message is for the person who wrote it. */
public final class UnitsFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public UnitsFault(String message) {
        super(message);
    }
}
