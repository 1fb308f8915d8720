package org.firmset.plan.explain;

import java.time.LocalDate;
import java.util.List;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Former;
import org.firmset.plan.Material;
import org.firmset.plan.Pin;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Site;
import org.firmset.plan.SpendingLimit;
import org.firmset.plan.Stage;
import org.firmset.plan.Style;
import org.firmset.plan.Subproject;
import org.firmset.plan.Tool;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.jspecify.annotations.Nullable;

/** A problem while it is rewritten. Its parts may contradict each other until it is built. */
final class Rewrite {
    LocalDate statusDate;
    Style style;
    List<Trip> trips;
    List<Subproject> subprojects;
    List<Stage> stages;
    List<Wait> waits;
    List<Material> materials;
    List<DeliveryOffer> offers;
    Site site;
    List<Pin> pins;
    List<Tool> tools;

    @Nullable
    SpendingLimit spending;

    List<Former> former;

    Rewrite(PlanningProblem problem) {
        statusDate = problem.statusDate();
        style = problem.style();
        trips = problem.trips();
        subprojects = problem.subprojects();
        stages = problem.stages();
        waits = problem.waits();
        materials = problem.materials();
        offers = problem.offers();
        site = problem.site();
        pins = problem.pins();
        tools = problem.tools();
        spending = problem.spending();
        former = problem.former();
    }

    /** @throws IllegalArgumentException when its parts contradict each other */
    PlanningProblem build() {
        return new PlanningProblem(
                statusDate,
                style,
                trips,
                subprojects,
                stages,
                waits,
                materials,
                offers,
                site,
                pins,
                tools,
                spending,
                former);
    }
}
