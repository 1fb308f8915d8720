package org.firmset.cli;

/** A command line that cannot be followed; the message says why and what to write. */
final class NotUnderstood extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotUnderstood(String message) {
        super(message);
    }
}
