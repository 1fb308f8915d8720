package org.firmset.trade.power;

import org.firmset.trade.climate.SkyPoint;

/**
 * Sun through a clear sky, for the shape of a day: beam 1353 W/m2 x 0.7 ^ (air mass ^ 0.678) (Meinel and Meinel 1976) with the air
 * mass of Kasten and Young 1989, a tenth of it from the sky all around, a fifth of what falls on the ground thrown back; the
 * panel sees sky and ground by its tilt (Liu and Jordan 1963). Formulas seen in public source texts, papers from memory.
 * Good to a tenth or so, which is why only its shape is used.
 */
final class ClearSky {
    private static final double BEAM_ABOVE_AIR = 1353;
    private static final double SKY_SHARE = 0.1;
    private static final double GROUND_SHARE = 0.2;

    private ClearSky() {}

    /**
     * W/m2 on a plane.
     *
     * @param shaded whether hill or tree stands before the sun: the sky's part still comes
     */
    static double on(SkyPoint sun, boolean shaded, double tiltDegrees, double azimuthDegrees) {
        if (sun.elevationDegrees() <= 0) {
            return 0;
        }
        double height = Math.toRadians(sun.elevationDegrees());
        double tilt = Math.toRadians(tiltDegrees);
        double turn = Math.toRadians(sun.azimuthDegrees() - azimuthDegrees);
        double beam = BEAM_ABOVE_AIR * Math.pow(0.7, Math.pow(airMass(sun.elevationDegrees()), 0.678));
        double sky = SKY_SHARE * beam;
        double straight = shaded ? 0 : beam;
        double facing = Math.sin(height) * Math.cos(tilt) + Math.cos(height) * Math.sin(tilt) * Math.cos(turn);
        double ground = GROUND_SHARE * (straight * Math.sin(height) + sky);
        return straight * Math.max(0, facing) + sky * (1 + Math.cos(tilt)) / 2 + ground * (1 - Math.cos(tilt)) / 2;
    }

    private static double airMass(double elevationDegrees) {
        return 1
                / (Math.sin(Math.toRadians(elevationDegrees))
                        + 0.50572 * Math.pow(elevationDegrees + 6.07995, -1.6364));
    }
}
