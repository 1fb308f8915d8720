package org.firmset.trade.haul;

import java.util.List;
import org.firmset.measure.Mass;
import org.firmset.measure.Measured;

/** What may still be loaded: ratings less what is on board already. Planning aid; stickers and scales come first. */
public final class CargoRoom {
    private CargoRoom() {}

    /**
     * Gross rating less the empty mass and everything else on board; not under zero.
     *
     * @param onBoard people, standing kit, the tongue of an empty trailer
     */
    public static Mass of(Mass grossRating, Mass emptyMass, List<Mass> onBoard) {
        var room = grossRating.value().subtract(emptyMass.value());
        for (Measured mass : onBoard) {
            room = room.subtract(mass.value());
        }
        return new Mass(room.max(java.math.BigDecimal.ZERO));
    }
}
