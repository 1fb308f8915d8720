package org.firmset.trade.haul;

import java.util.List;

/** A vehicle, with its trailer if it tows one, as far as cargo is concerned. */
public record Rig(String id, String name, List<Bay> bays, List<MassLimit> limits) {
    public Rig {
        bays = List.copyOf(bays);
        limits = List.copyOf(limits);
    }
}
