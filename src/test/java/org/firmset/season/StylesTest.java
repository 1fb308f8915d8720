package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.plan.Effort;
import org.firmset.plan.SeasonPlan;
import org.firmset.plan.Style;
import org.firmset.season.report.SeasonPlanner;
import org.junit.jupiter.api.Test;

/** Each style is the best of the three at its own aim. */
class StylesTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    @Test
    void noStyleOfTheDemoIsBeatenAtItsOwnAim() {
        Homestead demo = SeedHomesteads.demo(TODAY);
        Map<Style, SeasonPlan> plans = new EnumMap<>(Style.class);
        for (Style style : Style.values()) {
            SeasonPlanner.Result result = new SeasonPlanner().plan(demo, TODAY, style, new Effort(600, 1));
            plans.put(style, ((SeasonPlanner.Result.Planned) result).season().plan());
        }
        assertThat(plans.values()).allSatisfy(other -> {
            assertThat(other.totals().trips())
                    .isGreaterThanOrEqualTo(
                            of(plans, Style.FEWEST_TRIPS).totals().trips());
            assertThat(other.totals().cents())
                    .isGreaterThanOrEqualTo(
                            of(plans, Style.LEAST_MONEY).totals().cents());
            assertThat(weighted(other, demo)).isGreaterThanOrEqualTo(weighted(of(plans, Style.SOONEST), demo));
        });
    }

    private static SeasonPlan of(Map<Style, SeasonPlan> plans, Style style) {
        return Objects.requireNonNull(plans.get(style));
    }

    private static long weighted(SeasonPlan plan, Homestead homestead) {
        return homestead.subprojects().stream()
                .mapToLong(p -> p.priority()
                        * Objects.requireNonNull(plan.finishes().get(p.key())).toEpochDay())
                .sum();
    }
}
