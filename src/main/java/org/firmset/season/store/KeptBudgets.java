package org.firmset.season.store;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * All that was kept of a homestead, in the order in which it was kept.
 *
 * @param whole those that can be held against what is expected now
 * @param unread those that this version of the program cannot read; they stay as they are
 */
public record KeptBudgets(List<KeptBaseline> whole, List<Unread> unread) {
    public KeptBudgets {
        whole = List.copyOf(whole);
        unread = List.copyOf(unread);
    }

    /** @param on the day it was kept for @param why goes on after 'cannot be read: ' */
    public record Unread(UUID id, LocalDate on, String why) {}
}
