package org.firmset.trade.takeoff.cutting;

import java.util.List;

/**
 * What is cut from one stock.
 *
 * @param stock index of the stock
 * @param pieces how many of each demand, by index
 */
public record Pattern(int stock, List<Integer> pieces) {
    public Pattern {
        pieces = List.copyOf(pieces);
    }
}
