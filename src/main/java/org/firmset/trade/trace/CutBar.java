package org.firmset.trade.trace;

import java.util.List;

/**
 * How stock of one length is cut, to be drawn to scale.
 *
 * @param times how many are cut like this
 * @param stock length of the stock in metres
 * @param pieces lengths of the pieces in metres, in the order they are cut
 * @param left what is left over in metres, 0 or more
 */
public record CutBar(int times, double stock, List<Double> pieces, double left) {
    public CutBar {
        pieces = List.copyOf(pieces);
    }
}
