package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.time.MonthDay;
import org.firmset.homestead.SeasonWindow;
import org.jspecify.annotations.Nullable;

@Embeddable
record SeasonColumns(
        @Column(name = "season_first") MonthDay from,
        @Column(name = "season_last") MonthDay to) {

    static @Nullable SeasonColumns of(@Nullable SeasonWindow season) {
        return season == null ? null : new SeasonColumns(season.from(), season.to());
    }

    SeasonWindow toRecord() {
        return new SeasonWindow(from, to);
    }
}
