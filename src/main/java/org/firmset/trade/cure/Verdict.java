package org.firmset.trade.cure;

/** What the weather lets one do, the harder the later. */
enum Verdict {
    GO("go"),
    PROTECT("not without protection"),
    NO_GO("no-go");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
