package org.firmset.spend.ui;

/** Numbers of things in words. */
final class Count {
    private Count() {}

    /** "1 receipt", "1,200 receipts". */
    static String of(long count, String thing) {
        return "%,d %s%s".formatted(count, thing, count == 1 ? "" : "s");
    }
}
