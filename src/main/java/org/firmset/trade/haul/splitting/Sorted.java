package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.MassLimit;
import org.firmset.trade.haul.Rig;

/** Cargo that a run can carry, and cargo that none can, with the reason. */
record Sorted(List<Cargo> lines, List<Unfit> unfit) {

    static Sorted of(Rig rig, List<Cargo> cargo) {
        long packs = cargo.stream().mapToLong(Cargo::count).sum();
        if (packs > Cargo.MOST_PACKS) {
            throw new IllegalArgumentException(
                    "the cargo has [%d] packs together; %d are the most".formatted(packs, Cargo.MOST_PACKS));
        }
        List<Cargo> lines = new ArrayList<>();
        List<Unfit> unfit = new ArrayList<>();
        for (Cargo line : cargo) {
            List<Bay> longEnough = bays(rig.bays(), line.longestMillimetres(), Bay::longestMillimetres);
            List<Bay> largeEnough = bays(longEnough, line.millilitres(), Bay::millilitres);
            long heaviest = most(largeEnough, bay -> mostGrams(rig, bay));
            if (longEnough.isEmpty()) {
                unfit.add(new Unfit(line, Unfit.Why.TOO_LONG, most(rig.bays(), Bay::longestMillimetres)));
            } else if (largeEnough.isEmpty()) {
                unfit.add(new Unfit(line, Unfit.Why.TOO_LARGE, most(longEnough, Bay::millilitres)));
            } else if (line.grams() > heaviest) {
                unfit.add(new Unfit(line, Unfit.Why.TOO_HEAVY, heaviest));
            } else {
                lines.add(line);
            }
        }
        return new Sorted(lines, unfit);
    }

    private static List<Bay> bays(List<Bay> of, long needed, ToLongFunction<Bay> room) {
        return of.stream().filter(b -> room.applyAsLong(b) >= needed).toList();
    }

    private static long most(List<Bay> bays, ToLongFunction<Bay> room) {
        return bays.stream().mapToLong(room).max().orElse(0);
    }

    /** The heaviest pack that may lie alone in a bay. */
    private static long mostGrams(Rig rig, Bay bay) {
        long most = Long.MAX_VALUE;
        for (MassLimit limit : rig.limits()) {
            int share = limit.shareOf(bay.id());
            if (share > 0) {
                most = Math.min(most, Pieces.thousandths(limit) / share);
            }
        }
        return most;
    }
}
