package org.firmset.trade.cure;

/** How fast a cement gains strength: the coefficient s of EN 1992-1-1, 3.1.2(6). */
public enum Cement {
    RAPID(0.20),
    NORMAL(0.25),
    SLOW(0.38);

    private final double coefficient;

    Cement(double coefficient) {
        this.coefficient = coefficient;
    }

    double coefficient() {
        return coefficient;
    }
}
