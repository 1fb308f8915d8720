package org.firmset.spend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.firmset.measure.Cash;
import org.javamoney.moneta.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Work and money against the plan, held against printed examples. */
class EarnedValueTest {
    /** Four sides of a fence at 1,000 each, a side a day; by day 3 two and a half are done for 2,800. */
    private static final EarnedValue FENCE = new EarnedValue(usd(3000), usd(2500), usd(2800), usd(4000));

    private static final EarnedValue YEAR = new EarnedValue(usd(23_000), usd(20_000), usd(25_000), usd(120_000));

    @Test
    void fence_on_day_3_PM_08_training_exercise_studylib_5898152() {
        assertThat(FENCE.costVariance()).isEqualTo(usd(-300));
        assertThat(FENCE.scheduleVariance()).isEqualTo(usd(-500));
        assertThat(FENCE.costIndex().orElseThrow())
                .isCloseTo(new BigDecimal("0.893"), within(new BigDecimal("0.0005")));
        assertThat(FENCE.scheduleIndex().orElseThrow())
                .isCloseTo(new BigDecimal("0.833"), within(new BigDecimal("0.0005")));
    }

    @Test
    void fence_at_its_end_PM_08_without_rounding_the_index_first() {
        assertThat(FENCE.estimateAtCompletion()).hasValue(usd(4480));
        assertThat(FENCE.estimateToComplete()).hasValue(usd(1680));
        assertThat(FENCE.varianceAtCompletion()).hasValue(usd(-480));
        assertThat(FENCE.toCompleteIndex().orElseThrow()).isEqualByComparingTo("1.25");
    }

    @Test
    void one_year_job_PM_09_textbook_answer_studylib_9750501() {
        assertThat(YEAR.costVariance()).isEqualTo(usd(-5000));
        assertThat(YEAR.scheduleVariance()).isEqualTo(usd(-3000));
        assertThat(YEAR.costIndex().orElseThrow()).isEqualByComparingTo("0.80");
        assertThat(YEAR.scheduleIndex().orElseThrow())
                .isCloseTo(new BigDecimal("0.8696"), within(new BigDecimal("0.00005")));
        assertThat(YEAR.estimateAtCompletion()).hasValue(usd(150_000));
        assertThat(12 / YEAR.scheduleIndex().orElseThrow().doubleValue()).isCloseTo(13.8, within(0.0138));
    }

    @Test
    void words_say_over_and_behind_and_never_a_bare_sign() {
        assertThat(FENCE.costInWords()).isEqualTo("over by $300.00");
        assertThat(FENCE.workInWords()).isEqualTo("behind by $500.00");
        EarnedValue good = new EarnedValue(usd(1), usd(3), usd(2), usd(9));
        assertThat(good.costInWords()).isEqualTo("under by $1.00");
        assertThat(good.workInWords()).isEqualTo("ahead by $2.00");
        assertThat(new EarnedValue(usd(1), usd(1), usd(1), usd(9)).costInWords())
                .isEqualTo("as planned");
    }

    @Test
    void before_anything_is_done_there_are_no_indices() {
        EarnedValue none = new EarnedValue(usd(0), usd(0), usd(0), usd(9));
        assertThat(none.costIndex()).isEmpty();
        assertThat(none.scheduleIndex()).isEmpty();
        assertThat(none.estimateAtCompletion()).isEmpty();
        assertThat(new EarnedValue(usd(9), usd(8), usd(9), usd(9)).toCompleteIndex())
                .isEmpty();
    }

    @Test
    void a_stage_is_earned_when_it_is_finished_and_planned_by_its_date() {
        LocalDate may = LocalDate.of(2027, 5, 1);
        Baseline baseline = new Baseline(
                LocalDate.of(2026, 11, 14),
                "USD",
                List.of(
                        item("water", "wall", usd(400), may),
                        item("water", "cap", usd(700), may.plusDays(30)),
                        item("shop", "slab", usd(600), may.plusDays(1)),
                        item("shop", null, usd(50), null)),
                List.of());
        EarnedValue value =
                baseline.on(may.plusDays(1), Map.of("wall", may.plusDays(1), "cap", may.plusDays(2)), usd(450));
        assertThat(value).isEqualTo(new EarnedValue(usd(1000), usd(400), usd(450), usd(1750)));
        assertThat(baseline.of("shop")).isEqualTo(usd(650));
    }

    private static Baseline.Item item(
            String subproject, @Nullable String stage, Money amount, @Nullable LocalDate finish) {
        return new Baseline.Item(subproject, stage, LineKind.MATERIAL, null, BigDecimal.ZERO, amount, null, finish);
    }

    private static Money usd(long amount) {
        return Cash.ofCents(amount * 100, "USD");
    }
}
