package org.firmset.season;

import java.util.List;
import java.util.function.UnaryOperator;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.ToolTime;
import org.firmset.measure.Energy;
import org.firmset.measure.Hours;
import org.jspecify.annotations.Nullable;

/** Homesteads in which one stage is another. */
public final class StageCopies {
    private StageCopies() {}

    public static Homestead withStage(Homestead homestead, String key, UnaryOperator<Stage> how) {
        return homestead.withStages(homestead.stages().stream()
                .map(s -> s.key().equals(key) ? how.apply(s) : s)
                .toList());
    }

    static Stage withCrew(Stage stage, int crew) {
        return with(stage, stage.labour(), crew, stage.energyPerHour(), stage.toolTimes());
    }

    public static Stage withLabour(Stage stage, Hours labour) {
        return with(stage, labour, stage.crew(), stage.energyPerHour(), stage.toolTimes());
    }

    /** Drawing this for each hour of its labour, whatever its tools draw. */
    public static Stage withDraw(Stage stage, Energy perHour) {
        return with(stage, stage.labour(), stage.crew(), perHour, List.of());
    }

    private static Stage with(
            Stage s, Hours labour, int crew, @Nullable Energy energyPerHour, List<ToolTime> toolTimes) {
        return new Stage(
                s.key(),
                s.name(),
                s.subproject(),
                labour,
                crew,
                s.layout(),
                s.leastBlock(),
                s.mostPerDay(),
                energyPerHour,
                s.tools(),
                s.season(),
                s.notBefore(),
                s.notAfter(),
                s.conditions(),
                s.needs(),
                s.hazards(),
                s.progress(),
                s.note(),
                toolTimes,
                s.headLamp(),
                s.water());
    }
}
