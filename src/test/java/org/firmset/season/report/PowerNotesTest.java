package org.firmset.season.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.PowerKit;
import org.firmset.homestead.file.SeedHomesteads;
import org.firmset.measure.Energy;
import org.firmset.plan.Effort;
import org.firmset.plan.Style;
import org.firmset.season.result.SeasonReport;
import org.junit.jupiter.api.Test;

class PowerNotesTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead DEMO = SeedHomesteads.demo(TODAY);

    @Test
    void the_wall_of_the_demo_is_filled_on_two_days_since_the_battery_does_not_last_for_one() {
        List<SeasonReport.WorkPart> fill = fill(DEMO);
        assertThat(fill).hasSize(2);
        assertThat(fill.getFirst().powerNote())
                .startsWith("Power is what ends it, not hours")
                .containsPattern("Core fill grout, 80 lb: \\d+ of 43 today, \\d+ on ");
        assertThat(fill.getLast().powerNote()).isNull();
    }

    @Test
    void with_a_battery_twice_as_large_power_does_not_split_it() {
        PowerKit kit = Objects.requireNonNull(DEMO.power());
        Energy twice = new Energy(kit.capacity().value().multiply(BigDecimal.TWO));
        assertThat(fill(DEMO.withPower(kit.withCapacity(twice))))
                .isNotEmpty()
                .allSatisfy(part -> assertThat(part.powerNote()).isNull());
    }

    private static List<SeasonReport.WorkPart> fill(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(300, 1));
        return ((SeasonPlanner.Result.Planned) result)
                .season().report().trips().stream()
                        .flatMap(trip -> trip.days().stream())
                        .flatMap(day -> day.work().stream())
                        .filter(work -> work.stage().equals("water-wall-fill"))
                        .toList();
    }
}
