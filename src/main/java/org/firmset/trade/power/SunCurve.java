package org.firmset.trade.power;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Arrays;
import org.firmset.trade.climate.Coordinates;
import org.firmset.trade.climate.Horizon;
import org.firmset.trade.climate.SkyPoint;
import org.firmset.trade.climate.Sunlight;

/**
 * What a watt of panels gives through a day, in equal steps from midnight. The sum comes from hours of full sun, the shape from
 * a clear sky; a cloudy day is in truth flatter. Immutable. On the two days a year when clocks change it is an hour off by
 * night.
 */
public final class SunCurve {
    private static final int DAY_MINUTES = 24 * 60;
    private static final double FULL_SUN = 1000;

    private final int stepMinutes;
    private final double[] shares;

    private SunCurve(int stepMinutes, double[] shares) {
        this.stepMinutes = stepMinutes;
        this.shares = shares;
    }

    /** Where a curve is: the place, its horizon and how the panels stand. */
    public record Site(Coordinates place, Horizon horizon, Panels panels) {}

    /** A day. @param airCelsius matters only to panels whose heat is not in their losses */
    public record Day(LocalDate date, double sunHours, double airCelsius) {
        public Day {
            Must.lieWithin("sunHours", sunHours, 0, 24);
            Must.lieWithin("airCelsius", airCelsius, -60, 60);
        }
    }

    /** @param stepMinutes 15, 30 or 60 */
    public static SunCurve of(Site site, Day day, int stepMinutes) {
        int steps = steps(stepMinutes);
        Panels panels = site.panels();
        double[] irradiance = new double[steps];
        double openSum = 0;
        ZonedDateTime midnight = day.date().atStartOfDay(site.place().zone());
        boolean level = panels.known() == Panels.SunKnown.ON_LEVEL_GROUND;
        for (int step = 0; step < steps; step++) {
            ZonedDateTime middle = midnight.plusSeconds((step * 60L + 30) * stepMinutes);
            SkyPoint sun = Sunlight.place(site.place(), middle);
            boolean shaded = !site.horizon().shows(sun);
            irradiance[step] = ClearSky.on(sun, shaded, panels.tiltDegrees(), panels.azimuthDegrees());
            openSum += ClearSky.on(sun, false, level ? 0 : panels.tiltDegrees(), panels.azimuthDegrees());
        }
        double openHours = openSum / FULL_SUN * stepMinutes / 60;
        double factor = openHours > 0 ? day.sunHours() / openHours : 0;
        return new SunCurve(
                stepMinutes,
                Arrays.stream(irradiance)
                        .map(i -> share(panels, i * factor, day.airCelsius()))
                        .toArray());
    }

    private static double share(Panels panels, double irradiance, double airCelsius) {
        double cells = Photovoltaics.cellCelsius(irradiance, airCelsius, panels.nominalCellCelsius());
        return Photovoltaics.directWatts(irradiance, cells, 1, panels.percentPerKelvin())
                * (1 - panels.lossPercent() / 100);
    }

    /** No sun at all. @param stepMinutes 15, 30 or 60 */
    public static SunCurve dark(int stepMinutes) {
        return new SunCurve(stepMinutes, new double[steps(stepMinutes)]);
    }

    private static int steps(int stepMinutes) {
        if (stepMinutes != 15 && stepMinutes != 30 && stepMinutes != 60) {
            throw new IllegalArgumentException("stepMinutes [" + stepMinutes + "] must be 15, 30 or 60");
        }
        return DAY_MINUTES / stepMinutes;
    }

    public int stepMinutes() {
        return stepMinutes;
    }

    public int steps() {
        return shares.length;
    }

    /** Watts for each watt of panels in a step, counted from 0 at midnight. */
    public double wattsPerWatt(int step) {
        return shares[step];
    }

    /** Watt-hours of the day for each watt of panels. */
    public double hours() {
        return Arrays.stream(shares).sum() * stepMinutes / 60;
    }
}
