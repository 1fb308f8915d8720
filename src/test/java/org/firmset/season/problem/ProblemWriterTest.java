package org.firmset.season.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.SpendingLimit;
import org.firmset.homestead.Stage;
import org.firmset.homestead.StageLayout;
import org.firmset.homestead.Subproject;
import org.firmset.homestead.Tool;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.homestead.part.Part;
import org.firmset.measure.Cash;
import org.firmset.measure.Hours;
import org.firmset.measure.UnitSystem;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Style;
import org.firmset.plan.ToolUse;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ProblemWriterTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 4, 1);
    private static final Homestead PLACE = with(
            SeedHomesteads.empty("North Fork", UnitSystem.METRIC, TODAY),
            "subprojects",
            List.of(new Subproject("shop", "Shop", Cash.ofCents(0, "USD"), 1, null)));

    @Test
    void only_a_tool_that_stays_all_day_is_counted() {
        List<Tool> tools = List.of(
                new Tool("mixer", "Mixer", 2, null, true, 100, null, null),
                new Tool("level", "Level", 1, null, false, 100, null, null));
        PlanningProblem problem = written(with(PLACE, "tools", tools)
                .withStages(List.of(
                        stage("slab", "level", "mixer"), stage("wall", "mixer", "mixer"), stage("fence", "level"))));
        assertThat(problem.tools()).containsExactly(new org.firmset.plan.Tool("mixer", "Mixer", 2));
        assertThat(problem.stages())
                .extracting(s -> s.id(), s -> s.tools())
                .containsExactly(
                        tuple("slab", List.of(new ToolUse("mixer", 1))),
                        tuple("wall", List.of(new ToolUse("mixer", 1))),
                        tuple("fence", List.of()));
    }

    @Test
    void a_spending_limit_is_hard_when_it_is_firm() {
        assertThat(written(PLACE).spending()).isNull();
        assertThat(written(withLimit(true)).spending()).isEqualTo(new org.firmset.plan.SpendingLimit(40_050, true));
        assertThat(written(withLimit(false)).spending()).isEqualTo(new org.firmset.plan.SpendingLimit(40_050, false));
    }

    private static PlanningProblem written(Homestead homestead) {
        return ProblemWriter.write(homestead, TODAY, Style.SOONEST);
    }

    private static Homestead withLimit(boolean firm) {
        return with(PLACE, "spendingLimit", new SpendingLimit(Cash.ofCents(40_050, "USD"), firm));
    }

    private static Homestead with(Homestead homestead, String changed, Object value) {
        return Part.record(
                Homestead.class,
                Part.of(Homestead.class).stream()
                        .<@Nullable Object>map(p -> p.name().equals(changed) ? value : p.valueIn(homestead))
                        .toList());
    }

    private static Stage stage(String key, String... tools) {
        return new Stage(
                key,
                key,
                "shop",
                Hours.ofWhole(4),
                1,
                StageLayout.SPLITTABLE,
                null,
                null,
                null,
                List.of(tools),
                null,
                null,
                null,
                null,
                List.of(),
                List.of(),
                null,
                null,
                List.of(),
                false,
                null);
    }
}
