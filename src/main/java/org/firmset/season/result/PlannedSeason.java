package org.firmset.season.result;

import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SeasonPlan;

/** A plan together with the problem it solves and the words for it. */
public record PlannedSeason(PlanningProblem problem, SeasonPlan plan, SeasonReport report) {}
