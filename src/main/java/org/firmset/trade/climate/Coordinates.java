package org.firmset.trade.climate;

import java.time.ZoneId;

/**
 * A place on earth and the clock people keep there.
 *
 * @param latitudeDegrees north positive, -90 to 90
 * @param longitudeDegrees east positive, -180 to 180
 */
public record Coordinates(double latitudeDegrees, double longitudeDegrees, ZoneId zone) {
    public Coordinates {
        Demand.within("latitudeDegrees", latitudeDegrees, -90, 90);
        Demand.within("longitudeDegrees", longitudeDegrees, -180, 180);
    }
}
