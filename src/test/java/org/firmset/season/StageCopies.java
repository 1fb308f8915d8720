package org.firmset.season;

import java.util.function.UnaryOperator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.measure.Hours;

/** Homesteads in which one stage is another. */
final class StageCopies {
    private StageCopies() {}

    static Homestead withStage(Homestead homestead, String key, UnaryOperator<Stage> how) {
        return homestead.withStages(homestead.stages().stream()
                .map(s -> s.key().equals(key) ? how.apply(s) : s)
                .toList());
    }

    static Stage withCrew(Stage stage, int crew) {
        return with(stage, stage.labour(), crew);
    }

    static Stage withLabour(Stage stage, Hours labour) {
        return with(stage, labour, stage.crew());
    }

    private static Stage with(Stage s, Hours labour, int crew) {
        return new Stage(
                s.key(),
                s.name(),
                s.subproject(),
                labour,
                crew,
                s.layout(),
                s.leastBlock(),
                s.mostPerDay(),
                s.energyPerHour(),
                s.tools(),
                s.season(),
                s.notBefore(),
                s.notAfter(),
                s.conditions(),
                s.needs(),
                s.hazards(),
                s.progress(),
                s.note(),
                s.toolTimes(),
                s.headLamp(),
                s.water());
    }
}
