package org.firmset.season;

import java.util.ArrayList;
import java.util.List;
import org.firmset.homestead.CementClass;
import org.firmset.homestead.Cure;
import org.firmset.homestead.Stage;
import org.firmset.homestead.Wait;
import org.firmset.homestead.WaitKind;
import org.firmset.trade.cure.Ageing;
import org.firmset.trade.cure.StrengthMethod;
import org.jspecify.annotations.Nullable;

/** Waits made by chance; each leads from a stage to one further down the list, so there is no circle. */
final class RandomWaits {
    private static final int NEAR = 4;

    private final Dice dice;
    private final List<Stage> stages;
    private final boolean climateKnown;

    RandomWaits(Dice dice, List<Stage> stages, boolean climateKnown) {
        this.dice = dice;
        this.stages = stages;
        this.climateKnown = climateKnown;
    }

    List<Wait> waits() {
        List<Wait> waits = new ArrayList<>();
        for (int to = 1; to < stages.size(); to++) {
            for (int tries = dice.chance(70) ? dice.between(1, 2) : 0; tries > 0; tries--) {
                int from = dice.between(Math.max(0, to - NEAR), to - 1);
                waits.add(wait("wait-" + (waits.size() + 1), stages.get(from), stages.get(to)));
            }
        }
        return waits;
    }

    private Wait wait(String key, Stage from, Stage to) {
        WaitKind kind = dice.any(WaitKind.class);
        int least = kind == WaitKind.FOLLOWS ? 0 : dice.between(0, 10);
        @Nullable Cure cure = climateKnown && dice.chance(20) ? cure() : null;
        @Nullable Integer most = dice.chance(12) ? Integer.valueOf(least + dice.between(0, 40)) : null;
        return new Wait(key, "Wait " + key, kind, from.key(), to.key(), least, cure, most);
    }

    private Cure cure() {
        CementClass cement = dice.any(CementClass.class);
        return new Cure(
                dice.between(1, dice.chance(10) ? 100 : 60),
                cement,
                cement == CementClass.SLOW || dice.chance(70) ? StrengthMethod.EN_1992 : StrengthMethod.ACI_209,
                dice.chance(70) ? Ageing.EN_1992 : dice.any(Ageing.class));
    }
}
