package org.firmset.homestead.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.firmset.homestead.Conditions;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Pin;
import org.firmset.homestead.Progress;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.measure.Hours;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;

/** Stages do not contradict themselves. */
final class StageRules {
    private final boolean climateKnown;
    private final List<Fault> faults = new ArrayList<>();

    private StageRules(boolean climateKnown) {
        this.climateKnown = climateKnown;
    }

    static List<Fault> faults(Homestead homestead) {
        StageRules rules = new StageRules(!homestead.place().climate().isEmpty());
        List<Stage> stages = homestead.stages();
        for (int i = 0; i < stages.size(); i++) {
            rules.check(stages.get(i), "/stages/" + i);
        }
        List<Pin> pins = homestead.pins();
        Set<String> pinned = new HashSet<>();
        for (int i = 0; i < pins.size(); i++) {
            rules.check(pins.get(i), pinned, "/pins/" + i);
        }
        return rules.faults;
    }

    private void check(Stage stage, String pointer) {
        checkBlocks(stage, pointer);
        checkDates(stage, pointer);
        checkNeeds(stage, pointer);
        if (stage.conditions() != null) {
            checkConditions(stage.conditions(), pointer + "/conditions");
        }
        if (stage.progress() != null) {
            checkProgress(stage.progress(), stage.labour(), pointer + "/progress");
        }
    }

    private void checkBlocks(Stage stage, String pointer) {
        @Nullable Hours least = stage.leastBlock();
        @Nullable Hours most = stage.mostPerDay();
        if (least != null && most != null && least.quarters() > most.quarters()) {
            refuse(
                    pointer + "/leastBlock",
                    least.toString(),
                    "is over the most it can take on one day, " + most,
                    "Write less here or more there");
        }
        boolean inOneGo = stage.layout() == StageLayout.IN_ONE_GO;
        if (inOneGo && most != null && most.quarters() < stage.labour().quarters()) {
            refuse(
                    pointer + "/mostPerDay",
                    most.toString(),
                    "is under the labour " + stage.labour() + " of a stage that is done in one go",
                    "Leave it out, or write 'splittable' as the layout");
        }
    }

    private void checkDates(Stage stage, String pointer) {
        if (stage.notBefore() != null
                && stage.notAfter() != null
                && stage.notAfter().isBefore(stage.notBefore())) {
            refuse(
                    pointer + "/notAfter",
                    stage.notAfter().toString(),
                    "is before the first possible date " + stage.notBefore(),
                    "Write the later date here");
        }
    }

    private void checkNeeds(Stage stage, String pointer) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < stage.needs().size(); i++) {
            String material = stage.needs().get(i).material();
            if (!seen.add(material)) {
                refuse(
                        pointer + "/needs/" + i + "/material",
                        material,
                        "is needed twice by the same stage",
                        "Add the packs up in one need");
            }
        }
    }

    private void checkConditions(Conditions conditions, String pointer) {
        @Nullable Temperature coldest = conditions.coldestDay();
        @Nullable Temperature hottest = conditions.hottestDay();
        if (coldest != null && hottest != null && coldest.value().compareTo(hottest.value()) > 0) {
            refuse(
                    pointer + "/coldestDay",
                    coldest.toString(),
                    "is over the hottest day " + hottest,
                    "Write the lower of the two here");
        }
        if (conditions.leastOdds() != null && !climateKnown) {
            refuse(
                    pointer + "/leastOdds",
                    conditions.leastOdds() + " %",
                    "cannot be reckoned without the climate of the place",
                    "Write the twelve months in /place/climate, or leave the odds out");
        }
    }

    private void checkProgress(Progress progress, Hours labour, String pointer) {
        boolean finished = progress.finishedOn() != null;
        if (finished != progress.labourLeft().isNone()) {
            refuse(
                    pointer + "/labourLeft",
                    progress.labourLeft().toString(),
                    finished ? "is left of a finished stage" : "is left but the stage is not finished",
                    "Exactly a finished stage has 0 h left and a date in finishedOn");
        }
        if (progress.labourLeft().quarters() > labour.quarters()) {
            refuse(
                    pointer + "/labourLeft",
                    progress.labourLeft().toString(),
                    "is more than the stage's labour " + labour,
                    "Write less here, or more labour for the stage");
        }
        if (progress.finishedOn() != null && progress.finishedOn().isBefore(progress.startedOn())) {
            refuse(
                    pointer + "/finishedOn",
                    progress.finishedOn().toString(),
                    "is before the start " + progress.startedOn(),
                    "Write the later date here");
        }
    }

    private void check(Pin pin, Set<String> pinned, String pointer) {
        if (pin.dates().isEmpty()) {
            refuse(pointer + "/dates", "", "holds no date", "Write at least one date");
        }
        if (!pinned.add(pin.stage())) {
            refuse(pointer + "/stage", pin.stage(), "is pinned twice", "Write all its dates in one pin");
        }
    }

    private void refuse(String pointer, String value, String problem, String remedy) {
        faults.add(new Fault(pointer, value, problem, remedy));
    }
}
