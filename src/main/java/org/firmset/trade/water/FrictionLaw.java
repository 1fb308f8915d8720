package org.firmset.trade.water;

import org.firmset.trade.trace.Source;

/** By which law friction is worked out. */
public enum FrictionLaw {
    DARCY_WEISBACH("h = f L / d v2 / 2g"),
    HAZEN_WILLIAMS("h = 10.67 L Q^1.852 / (C^1.852 d^4.8704)");

    private final String formula;

    FrictionLaw(String formula) {
        this.formula = formula;
    }

    String formula() {
        return formula;
    }

    Source source() {
        return switch (this) {
            case DARCY_WEISBACH -> Sources.DARCY;
            case HAZEN_WILLIAMS -> Sources.HAZEN_WILLIAMS;
        };
    }

    FrictionLaw other() {
        return switch (this) {
            case DARCY_WEISBACH -> HAZEN_WILLIAMS;
            case HAZEN_WILLIAMS -> DARCY_WEISBACH;
        };
    }
}
