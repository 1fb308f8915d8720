package org.firmset.trade.haul;

import java.util.ArrayList;
import java.util.List;

/** Holds a placed load against everything that must hold. */
final class Excesses {
    private Excesses() {}

    static List<Excess> of(Outfit outfit, List<Cargo> cargo, LoadSheet sheet, List<Zone> zones) {
        List<Excess> result = new ArrayList<>();
        sheet.limits().stream()
                .filter(l -> l.overGrams() > 0)
                .forEach(l -> result.add(new Excess(Excess.Kind.MASS, l.kind().words(), l.overGrams())));
        addTongue(outfit, cargo, sheet, result);
        for (Bay bay : outfit.bays()) {
            addRoom(bay, zones, result);
            addLength(bay, cargo, result);
        }
        return result;
    }

    /** Only for a deck that was measured and carries something: no other can be mended by moving things. */
    private static void addTongue(Outfit outfit, List<Cargo> cargo, LoadSheet sheet, List<Excess> result) {
        Tongue tongue = sheet.tongue();
        if (tongue == null || !Stowing.tongueCounts(outfit, cargo)) {
            return;
        }
        if (tongue.missingGrams() > 0) {
            result.add(new Excess(Excess.Kind.TONGUE_LIGHT, "tongue", tongue.missingGrams()));
        }
        if (tongue.extraGrams() > 0) {
            result.add(new Excess(Excess.Kind.TONGUE_HEAVY, "tongue", tongue.extraGrams()));
        }
    }

    private static void addRoom(Bay bay, List<Zone> zones, List<Excess> result) {
        long over = zones.stream()
                .filter(z -> z.bay().equals(bay.id()))
                .mapToLong(z -> Math.max(0, z.millilitres() - z.roomMillilitres()))
                .sum();
        if (over > 0) {
            result.add(new Excess(Excess.Kind.ROOM, bay.name(), over));
        }
    }

    private static void addLength(Bay bay, List<Cargo> cargo, List<Excess> result) {
        long longest = cargo.stream()
                .filter(c -> c.bay().equals(bay.id()))
                .mapToLong(c -> c.packs().longestMillimetres())
                .max()
                .orElse(0);
        if (longest > bay.longestMillimetres()) {
            result.add(new Excess(Excess.Kind.LENGTH, bay.name(), longest - bay.longestMillimetres()));
        }
    }
}
