package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.time.LocalDate;
import org.firmset.homestead.Progress;
import org.firmset.measure.Hours;
import org.jspecify.annotations.Nullable;

@Embeddable
record ProgressColumns(
        @Column(name = "started_on") LocalDate startedOn,
        @Column(name = "labour_left_quarter_hours") Hours labourLeft,
        @Column(name = "finished_on") @Nullable LocalDate finishedOn) {

    static @Nullable ProgressColumns of(@Nullable Progress progress) {
        return progress == null
                ? null
                : new ProgressColumns(progress.startedOn(), progress.labourLeft(), progress.finishedOn());
    }

    Progress toRecord() {
        return new Progress(startedOn, labourLeft, finishedOn);
    }
}
