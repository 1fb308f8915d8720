package org.firmset.spend;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Progress;
import org.firmset.homestead.Stage;

/** Which work is done. */
public final class FinishedWork {
    private FinishedWork() {}

    /** When each finished stage was finished, by its key, in the order of the homestead. */
    public static Map<String, LocalDate> of(Homestead homestead) {
        Map<String, LocalDate> finished = new LinkedHashMap<>();
        for (Stage stage : homestead.stages()) {
            Progress progress = stage.progress();
            if (progress != null && progress.finishedOn() != null) {
                finished.put(stage.key(), progress.finishedOn());
            }
        }
        return finished;
    }
}
