package org.firmset.homestead;

import org.firmset.trade.power.ColdShare;

/** What a battery is made of, which decides what it gives in the cold. */
public enum BatteryKind {
    LEAD_ACID(ColdShare.LEAD_ACID),
    LITHIUM(ColdShare.LITHIUM);

    private final ColdShare coldShare;

    BatteryKind(ColdShare coldShare) {
        this.coldShare = coldShare;
    }

    public ColdShare coldShare() {
        return coldShare;
    }
}
