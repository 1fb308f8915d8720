package org.firmset.plan;

import java.time.LocalDate;

/** Energy a generator gives on a site day, in Wh. */
public record GeneratorUse(LocalDate date, long wattHours) {}
