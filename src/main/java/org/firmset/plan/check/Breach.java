package org.firmset.plan.check;

import org.firmset.plan.Rule;

/**
 * One place where a schedule breaks a hard rule.
 *
 * @param message a plain sentence with names, dates, numbers and units
 */
public record Breach(Rule rule, String message) {}
