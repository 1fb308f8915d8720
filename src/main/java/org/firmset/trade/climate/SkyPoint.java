package org.firmset.trade.climate;

/**
 * Where the sun stands.
 *
 * @param azimuthDegrees clockwise from true north: 0 is north, 90 east, 180 south
 * @param elevationDegrees of its centre above the flat horizon as it is seen, bent by the air; under 0 at night
 */
public record SkyPoint(double azimuthDegrees, double elevationDegrees) {}
