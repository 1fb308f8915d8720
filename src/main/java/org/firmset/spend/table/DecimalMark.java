package org.firmset.spend.table;

/** What stands before the cents. */
public enum DecimalMark {
    POINT('.', ','),
    COMMA(',', '.');

    final char mark;
    final char grouping;

    DecimalMark(char mark, char grouping) {
        this.mark = mark;
        this.grouping = grouping;
    }
}
