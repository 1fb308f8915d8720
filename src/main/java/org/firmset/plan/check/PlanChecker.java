package org.firmset.plan.check;

import java.util.List;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Schedule;

/**
 * Tests a schedule against every hard rule of the {@linkplain org.firmset.plan package description}. It shares no code
 * with the planner, so that one mistake cannot both make a wrong plan and pass it.
 */
public final class PlanChecker {
    private PlanChecker() {}

    /**
     * All breaches of the schedule; empty exactly when it keeps every rule. A schedule that makes no sense for the
     * problem (unknown ids, dates off site, negative amounts) is not refused: that it makes none is among the breaches.
     */
    public static List<Breach> check(PlanningProblem problem, Schedule schedule) {
        Facts facts = new Facts(problem, schedule);
        Breaches breaches = new Breaches();
        new LabourRules(facts, breaches).check();
        new WaitRules(facts, breaches).check();
        new DayRules(facts, breaches).check();
        new PowerRules(facts, breaches).check();
        new RunRules(facts, breaches).check();
        new DeliveryRules(facts, breaches).check();
        new LoadRules(facts, breaches).check();
        new SupplyRules(facts, breaches).check();
        new PinRules(facts, breaches).check();
        new ToolRules(facts, breaches).check();
        new MoneyRules(facts, breaches).check();
        return breaches.all();
    }
}
