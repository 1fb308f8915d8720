package org.firmset.plan.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.firmset.plan.Need;
import org.firmset.plan.Stage;
import org.firmset.plan.WorkBlock;

/** Packs that a stage uses on a date. */
record Use(Stage stage, LocalDate date, String material, long packs) {

    /**
     * The uses of a need in step with progress: when a of W quarter-hours are done, ceil(n a / W) of n packs are used.
     *
     * @param blocks of the stage, ascending by date
     */
    static List<Use> inStep(Stage stage, Need need, List<WorkBlock> blocks) {
        List<Use> uses = new ArrayList<>();
        long whole = stage.labourQuarters();
        long done = 0;
        long used = 0;
        for (WorkBlock block : blocks) {
            done = Math.min(whole, done + Math.max(0, block.quarters()));
            long usedNow = whole == 0 ? 0 : Math.ceilDiv(need.packs() * done, whole);
            if (usedNow > used) {
                uses.add(new Use(stage, block.date(), need.material(), usedNow - used));
            }
            used = usedNow;
        }
        return uses;
    }
}
