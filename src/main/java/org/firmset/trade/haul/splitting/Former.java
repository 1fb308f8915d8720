package org.firmset.trade.haul.splitting;

import java.util.ArrayList;
import java.util.List;
import org.firmset.trade.haul.Rig;

/** A split made before, kept as far as its packs are still there and still fit; what is new goes where there is room. */
final class Former {
    private Former() {}

    static List<Hold> of(Rig rig, Pieces pieces, List<Cargo> lines, Split before) {
        int[] open = pieces.wanted.clone();
        List<Hold> holds = new ArrayList<>();
        for (RunLoad run : before.runs()) {
            Hold hold = new Hold(pieces);
            holds.add(hold);
            run.placed().forEach(placed -> keep(rig, pieces, lines, placed, hold, open));
        }
        for (int k = 0; k < open.length; k++) {
            for (int i = 0; open[k] > 0; i++) {
                if (i == holds.size()) {
                    holds.add(new Hold(pieces));
                }
                for (int b = 0; b < pieces.bays(); b++) {
                    put(holds.get(i), k, b, open[k], open);
                }
            }
        }
        return holds.stream().filter(h -> !h.isEmpty()).toList();
    }

    private static void keep(Rig rig, Pieces pieces, List<Cargo> lines, Placed placed, Hold hold, int[] open) {
        for (int line = 0; line < lines.size(); line++) {
            for (int b = 0; b < pieces.bays(); b++) {
                if (lines.get(line).kind().equals(placed.kind())
                        && rig.bays().get(b).id().equals(placed.bay())) {
                    put(hold, pieces.kindOf[line], b, placed.count(), open);
                    return;
                }
            }
        }
    }

    private static void put(Hold hold, int kind, int bay, int count, int[] open) {
        int put = Math.min(Math.min(count, open[kind]), hold.most(kind, bay));
        hold.put(kind, bay, put);
        open[kind] -= put;
    }
}
