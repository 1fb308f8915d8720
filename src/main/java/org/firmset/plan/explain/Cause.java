package org.firmset.plan.explain;

/**
 * What a single change does.
 *
 * @param alone the problem before with this change only; {@link Trial.Refused} when the change cannot stand alone
 * @param without the problem after, but for this change; {@link Trial.Refused} when the others need it
 */
public record Cause(ProblemChange change, Trial alone, Trial without) {}
