package org.firmset.season;

import java.util.List;
import org.firmset.season.result.SeasonReport;

/** Reports that are another in one part. */
public final class Reports {
    private Reports() {}

    public static SeasonReport withStages(SeasonReport r, List<SeasonReport.StagePart> stages) {
        return new SeasonReport(
                r.homestead(),
                r.statusDate(),
                r.style(),
                r.finish(),
                r.tripCount(),
                r.runCount(),
                r.costs(),
                r.withoutPrice(),
                r.best(),
                r.subprojects(),
                r.trips(),
                stages,
                r.waits(),
                r.criticalPaths());
    }
}
