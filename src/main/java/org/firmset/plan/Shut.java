package org.firmset.plan;

import java.time.LocalDate;

/**
 * Dates on which a stage may not work, both ends included.
 *
 * @param why in plain words, to follow 'because': "nights may be below 4 °C"
 */
public record Shut(LocalDate from, LocalDate to, String why) {
    public boolean covers(LocalDate date) {
        return !date.isBefore(from) && !date.isAfter(to);
    }
}
