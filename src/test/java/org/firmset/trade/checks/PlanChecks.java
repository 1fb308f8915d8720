package org.firmset.trade.checks;

import static org.firmset.plan.search.PublishedPaths.building;
import static org.firmset.plan.search.PublishedPaths.cure;
import static org.firmset.plan.search.PublishedPaths.days;
import static org.firmset.plan.search.PublishedPaths.lecture;
import static org.firmset.plan.search.PublishedPaths.notes;
import static org.firmset.plan.search.PublishedPaths.slack;

import java.time.temporal.ChronoUnit;
import java.util.List;
import org.firmset.plan.SeasonPlan;

/** Critical paths with published results, as the planner finds them. */
final class PlanChecks {
    private PlanChecks() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                                "PM-01",
                                "Critical path by nodes",
                                "university lecture example (I. Odeh)",
                                "verified, slack by arithmetic")
                        .value("days in all", 21, 0, () -> days(lecture()))
                        .value("slack of B, days", 2, 0, () -> slack(lecture(), "b"))
                        .value("slack of D, days", 12, 0, () -> slack(lecture(), "d"))
                        .value("slack of E, days", 2, 0, () -> slack(lecture(), "e"))
                        .value("slack of G, days", 6, 0, () -> slack(lecture(), "g"))
                        .value("slack of F, days", 0, 0, () -> slack(lecture(), "f")),
                Row.of(
                                "PM-02",
                                "Critical path by arrows with a dummy",
                                "university notes, critical path method",
                                "verified")
                        .value("days in all", 53, 0, () -> days(notes()))
                        .value("slack of 2-4, days", 7, 0, () -> slack(notes(), "two-four"))
                        .value("slack of 5-6, days", 0, 0, () -> slack(notes(), "five-six")),
                Row.of(
                                "PM-03",
                                "Critical path of a small building job",
                                "Hendrickson, Project Management for Construction, ch. 10",
                                "memory: activity table; result by arithmetic")
                        .value("days in all", 30, 0, () -> days(building()))
                        .value("slack of D, days", 11, 0, () -> slack(building(), "d"))
                        .value("slack of H, days", 4, 0, () -> slack(building(), "h")),
                Row.of("PM-04", "A 3-day cure between two stages", "US Navy construction manual", "verified")
                        .value("days from finish to start", 3, 0, () -> gap(cure())));
    }

    private static long gap(SeasonPlan plan) {
        return ChronoUnit.DAYS.between(
                plan.story("pour").orElseThrow().finish(),
                plan.story("strip").orElseThrow().start());
    }
}
