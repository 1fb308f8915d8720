package org.firmset.spend.ui;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.UUID;
import org.firmset.spend.Selected;

/**
 * The part of a receipt that was asked for and counts on one day: a few numbers, so that a list of many thousands stays
 * small.
 */
record ListedReceipt(UUID id, LocalDate date, Selected part) {
    YearMonth month() {
        return YearMonth.from(date);
    }
}
