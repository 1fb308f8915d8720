package org.firmset.homestead;

import java.time.LocalDate;
import org.firmset.measure.Described;
import org.firmset.measure.Hours;
import org.jspecify.annotations.Nullable;

@Described("What has been done of a stage.")
public record Progress(
        @Described("When the work began.") LocalDate startedOn,

        @Described(value = "Labour still to do; none when finished.", most = "2000 h")
        Hours labourLeft,

        @Described("When it was finished; left out while it is not.") @Nullable
        LocalDate finishedOn) {}
