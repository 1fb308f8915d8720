package org.firmset.plan.check;

import java.time.LocalDate;
import org.firmset.plan.GeneratorUse;
import org.firmset.plan.Pin;
import org.firmset.plan.Rule;
import org.firmset.plan.Run;
import org.firmset.plan.Stage;
import org.firmset.plan.WorkBlock;

/** Rule 7: what is pinned or done stays. */
final class PinRules {
    private final Facts facts;
    private final Breaches breaches;

    PinRules(Facts facts, Breaches breaches) {
        this.facts = facts;
        this.breaches = breaches;
    }

    void check() {
        facts.problem().pins().forEach(this::isKept);
        facts.schedule().blocks().stream().filter(b -> isPast(b.date())).forEach(this::blockIsPast);
        facts.schedule().runs().stream().filter(r -> isPast(r.date())).forEach(this::runIsPast);
        facts.schedule().generator().stream().filter(g -> isPast(g.date())).forEach(this::generatorUseIsPast);
    }

    private String nameOf(String stage) {
        return facts.stage(stage).map(Stage::name).orElse(stage);
    }

    private void isKept(Pin pin) {
        for (WorkBlock block : facts.blocksOf(pin.stage())) {
            if (!pin.dates().contains(block.date())) {
                breaches.add(
                        Rule.PINNED,
                        "Stage [%s] works on %s but is pinned to %s because %s",
                        nameOf(pin.stage()),
                        block.date(),
                        pin.dates().stream().sorted().toList(),
                        pin.why());
            }
        }
    }

    private boolean isPast(LocalDate date) {
        return date.isBefore(facts.problem().statusDate());
    }

    private void blockIsPast(WorkBlock block) {
        isPlannedInThePast("A block of stage [" + nameOf(block.stage()) + "]", block.date());
    }

    private void runIsPast(Run run) {
        isPlannedInThePast("The " + RunRules.inWords(run.kind()) + " of trip [" + run.trip() + "]", run.date());
    }

    private void generatorUseIsPast(GeneratorUse use) {
        isPlannedInThePast("Generator energy of " + use.wattHours() + " Wh", use.date());
    }

    private void isPlannedInThePast(String what, LocalDate date) {
        breaches.add(
                Rule.PINNED,
                "%s is planned on %s, before the status date %s",
                what,
                date,
                facts.problem().statusDate());
    }
}
