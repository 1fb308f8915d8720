package org.firmset.plan;

import java.time.LocalDate;

/**
 * How often the weather lets a stage go on; no rule, but of two plans that are alike in all else the one with better odds is
 * better.
 *
 * @param permille 0 to 1000 of a thousand such dates
 */
public record WeatherOdds(String stage, LocalDate date, int permille) {
    public static final int ALWAYS = 1000;

    public WeatherOdds {
        Require.that(
                permille >= 0 && permille <= ALWAYS,
                "permille [%d] of stage [%s] on [%s] must be from 0 to 1000",
                permille,
                stage,
                date);
    }
}
