package org.firmset.season.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Hours;
import org.firmset.plan.Effort;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.StageCopies;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.junit.jupiter.api.Test;

/** What owners ask is answered in sentences that name the right things. */
class AnswersTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);

    private static PlannedSeason season(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    @Test
    void theChangeThatMovedAFinishIsNamed() {
        PlannedSeason before = season(DEMO);
        PlannedSeason after = season(StageCopies.withStage(
                DEMO,
                "cabin-walls",
                s -> StageCopies.withLabour(s, new Hours(s.labour().quarters() * 5 / 4))));
        List<String> answer = Answers.to(new Question.Causes(), after, Optional.of(before), new Stop());
        assertThat(answer.getFirst())
                .startsWith("Cabin walls and rafters changed: ")
                .contains("Cabin", "later");
    }

    @Test
    void withoutAPlanBeforeThereIsNothingToCompare() {
        assertThat(Answers.to(new Question.Causes(), season(DEMO), Optional.empty(), new Stop()))
                .containsExactly("The plan before the last change is not known any more.");
    }

    @Test
    void theStylesStandSideBySideAndTheShownPlanIsAmongThem() {
        PlannedSeason shown = season(DEMO);
        List<String> answer = Answers.to(new Question.Styles(), shown, Optional.empty(), new Stop());
        assertThat(answer).hasSize(4);
        assertThat(answer.getFirst())
                .startsWith("Finish soonest: Water ")
                .contains(shown.plan().totals().trips() + " trips")
                .endsWith("This is the plan that is shown.");
        assertThat(answer.get(1)).startsWith("Fewest trips: Water ");
    }

    @Test
    void aStageIsToldWhatWouldLetItStartSoonerAndHowLateItCouldStart() {
        List<String> answer = Answers.to(new Question.Start("shop-prime"), season(DEMO), Optional.empty(), new Stop());
        assertThat(answer.getFirst()).startsWith("No plan was found that has it begun by ");
        assertThat(answer)
                .contains(
                        "Each of these alone would be enough:",
                        "• more power: a larger battery, more panels or a generator.");
        assertThat(answer.getLast()).isEqualTo("It cannot start later without moving a finish.");
    }
}
