package org.firmset.trade.climate;

import java.util.List;

/**
 * How high hills and trees stand, by direction; flat where no sector says otherwise. Where sectors overlap the higher one
 * counts.
 */
public record Horizon(List<Sector> sectors) {
    public static final Horizon FLAT = new Horizon(List.of());

    private static final double CIRCLE = 360;

    public Horizon {
        sectors = List.copyOf(sectors);
    }

    /** In degrees above the flat horizon, in a direction clockwise from true north. */
    public double elevationDegrees(double azimuthDegrees) {
        return sectors.stream()
                .filter(s -> s.holds(azimuthDegrees))
                .mapToDouble(Sector::elevationDegrees)
                .max()
                .orElse(0);
    }

    /** Whether the sun's centre stands above hills and trees. */
    public boolean shows(SkyPoint sun) {
        return sun.elevationDegrees() > elevationDegrees(sun.azimuthDegrees());
    }

    /**
     * A part of the horizon, clockwise from one direction to another, through north if need be.
     *
     * @param fromDegrees clockwise from true north, 0 to 360
     * @param toDegrees clockwise from true north, 0 to 360, not the same as from
     * @param elevationDegrees of the top of hills or trees, 0 to 90
     */
    public record Sector(double fromDegrees, double toDegrees, double elevationDegrees) {
        public Sector {
            Demand.within("fromDegrees", fromDegrees, 0, CIRCLE);
            Demand.within("toDegrees", toDegrees, 0, CIRCLE);
            Demand.within("elevationDegrees", elevationDegrees, 0, 90);
            if (fromDegrees == toDegrees) {
                throw new IllegalArgumentException("toDegrees [" + toDegrees + "] must differ from fromDegrees");
            }
        }

        private boolean holds(double azimuth) {
            double turned = turn(azimuth - fromDegrees);
            double width = turn(toDegrees - fromDegrees);
            return turned < (width == 0 ? CIRCLE : width);
        }

        private static double turn(double degrees) {
            return (degrees % CIRCLE + CIRCLE) % CIRCLE;
        }
    }
}
