package org.firmset.trade.haul;

import java.util.List;

/**
 * A part of a bay's length.
 *
 * @param number 1 is the foremost
 * @param fromMillimetres from the front edge of the bay
 * @param grams what rests on it, its part of what lies across several zones included
 * @param millilitres room that is taken, likewise
 * @param roomMillilitres room there is
 * @param packs what lies in it alone, the lowest first; what lies across zones is told by {@link Placement#across}
 */
public record Zone(
        String bay,
        int number,
        long fromMillimetres,
        long lengthMillimetres,
        long grams,
        long millilitres,
        long roomMillilitres,
        List<Stowed> packs) {
    public Zone {
        packs = List.copyOf(packs);
    }
}
