package org.firmset.trade.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.firmset.trade.cure.Given.number;
import static org.firmset.trade.cure.Given.texts;
import static org.firmset.trade.cure.Given.weight;
import static org.firmset.trade.trace.Results.line;

import java.time.LocalDate;
import java.util.List;
import org.firmset.trade.trace.Amount;
import org.firmset.trade.trace.Curve;
import org.firmset.trade.trace.Finding.Weight;
import org.firmset.trade.trace.Line;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Source;
import org.firmset.trade.trace.Table;
import org.firmset.trade.trace.Term;
import org.firmset.trade.trace.Worksheet;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CuringTimeTest {
    private final Given.Pour pour = new Given.Pour();

    @Test
    void seventy_percent_at_twenty_degrees_takes_five_days() {
        Worksheet sheet = pour.work();
        assertThat(number(sheet, "awaited-share")).isEqualTo(70);
        assertThat(number(sheet, "age-needed")).isCloseTo(4.7547, within(0.0001));
        assertThat(number(sheet, "days-for-strength")).isEqualTo(5);
        assertThat(number(sheet, "least-days")).isZero();
        assertThat(number(sheet, "wait-days")).isEqualTo(5);
        assertThat(line(sheet, "ready-on").amount()).isEqualTo(Amount.on(LocalDate.of(2027, 5, 6)));
        assertThat(number(sheet, "age-when-ready")).isCloseTo(4.9906, within(0.0001));
        assertThat(number(sheet, "share-when-ready")).isCloseTo(71.0232, within(0.0001));
    }

    @Test
    void lines_say_how_they_came_about() {
        Worksheet sheet = pour.work();
        assertThat(sheet.lines())
                .extracting(Line::key)
                .containsExactly(
                        "awaited-share",
                        "age-needed",
                        "days-for-strength",
                        "least-days",
                        "wait-days",
                        "ready-on",
                        "age-when-ready",
                        "share-when-ready",
                        "protection-days",
                        "coldest-night",
                        "cold-nights",
                        "frost-nights");
        assertThat(line(sheet, "age-needed").formula()).isEqualTo("t = 28 / (1 - ln(r) / s)^2");
        assertThat(line(sheet, "age-needed").terms()).extracting(Term::symbol).containsExactly("r", "s");
        assertThat(line(sheet, "age-needed").source()).isSameAs(Sources.EN_STRENGTH);
        assertThat(line(sheet, "days-for-strength").formula()).startsWith("f = exp(13.65 - 4000 / (273 + T));");
        assertThat(line(sheet, "days-for-strength").source()).isSameAs(Sources.EN_AGE);
        assertThat(line(sheet, "share-when-ready").terms())
                .extracting(Term::symbol)
                .containsExactly("t", "s");
        assertThat(line(sheet, "ready-on").caution()).contains("never a strength test");
        assertThat(line(sheet, "ready-on").name()).isEqualTo("First day to bear what is planned");
    }

    @Test
    void the_days_are_followed_by_mean_and_factor() {
        pour.high = "15 degC";
        pour.low = "5 degC";
        List<Term> terms = line(pour.work(), "days-for-strength").terms();
        assertThat(number(terms.get(0).amount())).isEqualTo(10);
        assertThat(number(terms.get(1).amount())).isCloseTo(0.6161, within(0.0001));
        assertThat(number(terms.get(2).amount())).isCloseTo(4.7547, within(0.0001));
    }

    @Test
    void a_share_of_ones_own_has_no_source_but_a_milestones_is_common_practice() {
        assertThat(line(pour.work(), "awaited-share").source()).isEqualTo(Source.ARITHMETIC);
        pour.percent = null;
        pour.milestone = Milestone.SET_TANK;
        Worksheet sheet = pour.work();
        assertThat(line(sheet, "awaited-share").source()).isEqualTo(Source.PRACTICE);
        assertThat(line(sheet, "least-days").source()).isSameAs(Sources.TANK);
        pour.leastDays = 9;
        assertThat(line(pour.work(), "least-days").source()).isEqualTo(Source.ARITHMETIC);
    }

    @ParameterizedTest(name = "{0}: {1} %, {2} d")
    @CsvSource(textBlock = """
            WALK_ON_SLAB,         30, 1
            STRIP_SIDE_FORMS,     30, 1
            LAY_BLOCK_ON_FOOTING, 50, 2
            WHEELBARROW_TRAFFIC,  50, 3
            COMPACT_AGAINST_WALL, 75, 7
            SET_TANK,             70, 5
            STRIP_PROPS,          75, 7
            """)
    void milestones_bring_a_share_and_least_days(Milestone milestone, double percent, int days) {
        pour.milestone = milestone;
        pour.percent = null;
        Worksheet sheet = pour.work();
        assertThat(number(sheet, "awaited-share")).isEqualTo(percent);
        assertThat(number(sheet, "least-days")).isEqualTo(days);
        assertThat(line(sheet, "ready-on").name()).isEqualTo("First day to " + milestone.words());
    }

    @Test
    void least_days_hold_however_soon_the_strength_is_there() {
        pour.leastDays = 6;
        Worksheet sheet = pour.work();
        assertThat(number(sheet, "days-for-strength")).isEqualTo(5);
        assertThat(number(sheet, "wait-days")).isEqualTo(6);
        assertThat(line(sheet, "ready-on").amount()).isEqualTo(Amount.on(LocalDate.of(2027, 5, 7)));
    }

    @Test
    void both_overrides_beat_the_milestone() {
        pour.milestone = Milestone.SET_TANK;
        pour.percent = "50";
        pour.leastDays = 0;
        assertThat(number(pour.work(), "wait-days")).isEqualTo(2);
    }

    @Test
    void aci_takes_two_days_more() {
        pour.curve = StrengthMethod.ACI_209;
        Worksheet sheet = pour.work();
        assertThat(number(sheet, "wait-days")).isEqualTo(7);
        assertThat(line(sheet, "age-needed").source()).isSameAs(Sources.ACI_STRENGTH);
        assertThat(texts(sheet))
                .contains("The curve of ACI 209R has a share of 1.007 at 28 days; it is taken for 20 °C here.")
                .contains("By the curve of EN 1992-1-1 the strength takes 5 days, by that of ACI 209R 7 days:");
    }

    @Test
    void the_other_curve_is_told_for_comparison() {
        assertThat(weight(
                        pour.work(),
                        "By the curve of ACI 209R the strength takes 7 days, by that of EN 1992-1-1 5 days: published"))
                .isEqualTo(Weight.NOTE);
        assertThat(texts(pour.work())).doesNotContain("has a share of");
    }

    @Test
    void slow_cement_has_no_other_curve() {
        pour.cement = Cement.SLOW;
        assertThat(texts(pour.work())).doesNotContain("published curves differ");
    }

    @Nested
    class Temperatures {
        @Test
        void the_mean_of_high_and_low_counts() {
            pour.high = "15 degC";
            pour.low = "5 degC";
            assertThat(number(pour.work(), "wait-days")).isEqualTo(8);
        }

        @Test
        void readings_count_on_their_dates() {
            pour.readings = "2027-05-02: 5 degC; 2027-05-03: 5 degC; 2027-05-04: 5 degC";
            assertThat(number(pour.work(), "wait-days")).isEqualTo(7);
        }

        @Test
        void insulation_holds_the_cold_off() {
            pour.high = "4 degC";
            pour.low = "-4 degC";
            pour.insulated = true;
            Worksheet sheet = pour.work();
            assertThat(number(sheet, "wait-days")).isEqualTo(8);
            assertThat(texts(sheet))
                    .contains("The concrete is taken to be held at 10 °C (50 °F) or more until the wait is over.");
        }

        @Test
        void without_it_concrete_is_as_warm_as_the_air() {
            assertThat(weight(pour.work(), "The concrete is taken to be as warm as the air"))
                    .isEqualTo(Weight.NOTE);
        }

        @Test
        void the_same_on_all_days_is_an_assumption() {
            pour.high = "22 degC";
            pour.low = "16 degC";
            assertThat(weight(pour.work(), "Assumed: 19 °C (66 °F) on every day of the year."))
                    .isEqualTo(Weight.NOTE);
            pour.high = "22 22 22 22 22 22 22 22 22 22 22 23 degC";
            assertThat(texts(pour.work())).doesNotContain("Assumed");
            pour.high = "22 degC";
            pour.low = "16 16 16 16 16 16 16 16 16 16 16 15 degC";
            assertThat(texts(pour.work())).doesNotContain("Assumed");
        }

        @Test
        void ages_counted_for_twenty_three_degrees_say_so() {
            pour.ageing = Ageing.EQUIVALENT_AGE;
            Worksheet sheet = pour.work();
            assertThat(number(sheet, "wait-days")).isEqualTo(6);
            assertThat(weight(
                            sheet,
                            "Days are counted for 23 °C while the curve is that of 20 °C, where a day counts as 0.84:"))
                    .isEqualTo(Weight.NOTE);
            pour.ageing = Ageing.NURSE_SAUL_ZERO;
            assertThat(texts(pour.work())).doesNotContain("counted for 23 °C");
        }
    }

    @Nested
    class Warnings {
        @Test
        void what_is_always_said() {
            assertThat(weight(pour.work(), "A planning aid, never a strength test"))
                    .isEqualTo(Weight.NOTE);
            assertThat(weight(pour.work(), "The curve is that of concrete which is kept damp"))
                    .isEqualTo(Weight.NOTE);
        }

        @Test
        void ages_under_three_days_stretch_the_curve() {
            pour.percent = "59.8";
            assertThat(weight(pour.work(), "The curve is stretched under 3 days of age"))
                    .isEqualTo(Weight.NOTE);
            pour.percent = "59.9";
            assertThat(texts(pour.work())).doesNotContain("stretched");
        }

        @Test
        void strength_beyond_that_of_28_days_is_not_relied_on() {
            pour.leastDays = 28;
            assertThat(texts(pour.work())).doesNotContain("over 100 %");
            pour.leastDays = 29;
            assertThat(weight(pour.work(), "Strength over 100 %")).isEqualTo(Weight.NOTE);
        }

        @Test
        void what_is_never_warm_enough_ends_after_ten_years() {
            pour.high = "-5 degC";
            pour.low = "-5 degC";
            Worksheet sheet = pour.work();
            assertThat(weight(sheet, "It is never warm enough: the strength is not there after 3,650 days"))
                    .isEqualTo(Weight.WARNING);
            assertThat(number(sheet, "wait-days")).isEqualTo(3650);
            assertThat(number(sheet, "share-when-ready")).isZero();
            assertThat(texts(new Given.Pour().work())).doesNotContain("never warm enough");
        }

        @Test
        void days_of_frost_count_nothing() {
            pour.readings = "2027-05-02: -0.1 degC; 2027-05-03: 0 degC";
            assertThat(texts(pour.work()))
                    .contains("1 day of the wait under 0 °C (32 °F) in the mean and count nothing. Frozen concrete");
            pour.readings = "2027-05-02: 0 degC";
            assertThat(texts(pour.work())).doesNotContain("under 0 °C");
        }

        @Test
        void one_law_counts_them_all_the_same_and_says_so() {
            pour.ageing = Ageing.NURSE_SAUL_MINUS_TEN;
            pour.readings = "2027-05-02: -1 degC; 2027-05-03: -1 degC";
            assertThat(texts(pour.work()))
                    .contains("2 days of the wait under 0 °C (32 °F) in the mean; this way of counting still");
        }

        @Test
        void heat_costs_late_strength() {
            pour.readings = "2027-05-02: 32.1 degC; 2027-05-03: 32 degC";
            assertThat(weight(pour.work(), "1 day of the wait with a mean over 32 °C (90 °F)."))
                    .isEqualTo(Weight.WARNING);
            pour.readings = "2027-05-02: 32 degC";
            assertThat(texts(pour.work())).doesNotContain("over 32 °C");
        }

        @Test
        void stripping_counts_no_day_under_ten_degrees() {
            pour.milestone = Milestone.STRIP_SIDE_FORMS;
            pour.readings = "2027-05-02: 9.9 degC";
            assertThat(weight(pour.work(), "1 day of the least days with a mean under 10 °C (50 °F)"))
                    .isEqualTo(Weight.WARNING);
            pour.readings = "2027-05-02: 10 degC; 2027-05-03: 9 degC";
            assertThat(texts(pour.work())).doesNotContain("least days with");
            pour.milestone = Milestone.WALK_ON_SLAB;
            pour.readings = "2027-05-02: 9.9 degC";
            assertThat(texts(pour.work())).doesNotContain("least days with");
        }

        @ParameterizedTest(name = "{0}: {1}")
        @CsvSource(delimiter = '|', textBlock = """
                STRIP_SIDE_FORMS     | NOTE     | Stripping is not loading
                STRIP_PROPS          | ENGINEER | What props and soffit forms carry can fall on people
                COMPACT_AGAINST_WALL | WARNING  | Fill that is compacted pushes harder
                SET_TANK             | NOTE     | The slab is to be 100 mm (4 in) larger than the tank
                """)
        void a_milestone_brings_its_caution(Milestone milestone, Weight weight, String beginning) {
            assertThat(texts(pour.work())).doesNotContain(beginning);
            pour.milestone = milestone;
            assertThat(weight(pour.work(), beginning)).isEqualTo(weight);
        }

        @Test
        void core_fill_gains_like_slow_cement() {
            pour.milestone = Milestone.COMPACT_AGAINST_WALL;
            assertThat(weight(pour.work(), "Plain core fill has 60 to 70 %")).isEqualTo(Weight.NOTE);
            pour.cement = Cement.SLOW;
            assertThat(texts(pour.work())).doesNotContain("Plain core fill");
        }
    }

    @Nested
    class Protection {
        @ParameterizedTest(name = "{0}, {1}, accelerated {2}: {3} d")
        @CsvSource(textBlock = """
                SHELTERED, NORMAL, false, 2
                EXPOSED,   NORMAL, false, 3
                LOADED,    SLOW,   false, 6
                SHELTERED, NORMAL, true,  1
                EXPOSED,   RAPID,  false, 2
                LOADED,    RAPID,  true,  4
                """)
        void days_by_exposure(Exposure exposure, Cement cement, boolean accelerated, double days) {
            pour.exposure = exposure;
            pour.cement = cement;
            pour.accelerated = accelerated;
            assertThat(number(pour.work(), "protection-days")).isEqualTo(days);
        }

        @Test
        void the_usual_nights_after_the_pour_are_looked_at() {
            // from 14 in mid-April to 5 in mid-May, the lows fall to 8.48 on 4 May
            pour.low = "0 0 0 14 5 20 20 20 20 20 20 0 degC";
            pour.high = "40 degC";
            Worksheet sheet = pour.work();
            assertThat(number(sheet, "coldest-night")).isCloseTo(8.4839, within(0.0001));
            assertThat(number(sheet, "cold-nights")).isZero();
            assertThat(texts(sheet)).doesNotContain("4.4 °C");
        }

        @Test
        void cold_nights_ask_for_protection() {
            pour.low = "4.4 degC";
            Worksheet sheet = pour.work();
            assertThat(number(sheet, "cold-nights")).isEqualTo(3);
            assertThat(number(sheet, "frost-nights")).isZero();
            assertThat(weight(
                            sheet,
                            "3 nights under 4.4 °C (40 °F) usual after the pour, down to 4.4 °C (40 °F): keep cold from"
                                    + " it for 3 days."))
                    .isEqualTo(Weight.WARNING);
            assertThat(texts(sheet)).doesNotContain("Concrete that freezes");
            pour.low = "40 degF";
            assertThat(texts(pour.work())).doesNotContain("usual after the pour");
        }

        @Test
        void nights_of_frost_ruin_it() {
            pour.exposure = Exposure.SHELTERED;
            pour.accelerated = true;
            pour.low = "-0.1 degC";
            Worksheet sheet = pour.work();
            assertThat(number(sheet, "frost-nights")).isEqualTo(1);
            assertThat(texts(sheet)).contains("1 night under 4.4 °C (40 °F) usual");
            assertThat(weight(sheet, "Concrete that freezes before it has about 3.5 MPa"))
                    .isEqualTo(Weight.WARNING);
            pour.low = "0 degC";
            assertThat(texts(pour.work())).doesNotContain("Concrete that freezes");
        }

        @Test
        void insulation_turns_them_into_a_note() {
            pour.low = "-3 degC";
            pour.insulated = true;
            Worksheet sheet = pour.work();
            assertThat(weight(sheet, "3 nights under 4.4 °C")).isEqualTo(Weight.NOTE);
            assertThat(texts(sheet)).contains("Insulation must touch it").doesNotContain("Concrete that freezes");
        }
    }

    @Nested
    class TablesAndCurve {
        @Test
        void strength_day_by_day() {
            Table table = pour.work().tables().getFirst();
            assertThat(table.rows())
                    .extracting(row -> number(row.getFirst()))
                    .containsExactly(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 10.0, 14.0, 21.0, 28.0);
            List<Amount> fifth = table.rows().get(4);
            assertThat(fifth.get(1)).isEqualTo(Amount.on(LocalDate.of(2027, 5, 6)));
            assertThat(number(fifth.get(2))).isEqualTo(20);
            assertThat(number(fifth.get(3))).isCloseTo(4.9906, within(0.0001));
            assertThat(number(fifth.get(4))).isCloseTo(71.0232, within(0.0001));
        }

        @Test
        void the_end_of_the_wait_has_its_row() {
            pour.leastDays = 43;
            assertThat(pour.work().tables().getFirst().rows())
                    .extracting(row -> number(row.getFirst()))
                    .endsWith(21.0, 28.0, 42.0, 43.0);
            pour.leastDays = 8;
            assertThat(pour.work().tables().getFirst().rows())
                    .extracting(row -> number(row.getFirst()))
                    .endsWith(7.0, 8.0, 10.0, 14.0, 21.0, 28.0);
        }

        @Test
        void waits_of_pours_on_other_dates() {
            pour.poured = LocalDate.of(2027, 11, 20);
            pour.high = "0 0 5 10 20 20 20 20 20 10 5 0 degC";
            pour.low = "0 0 5 10 20 20 20 20 20 10 5 0 degC";
            List<List<Amount>> rows = pour.work().tables().get(1).rows();
            assertThat(rows).hasSize(12);
            assertThat(rows.getFirst().getFirst()).isEqualTo(Amount.on(LocalDate.of(2027, 11, 1)));
            assertThat(rows.getLast().getFirst()).isEqualTo(Amount.on(LocalDate.of(2028, 10, 1)));
            assertThat(rows.get(8))
                    .containsExactly(
                            Amount.on(LocalDate.of(2028, 7, 1)),
                            Amount.count(5, "days"),
                            Amount.on(LocalDate.of(2028, 7, 6)),
                            Amount.word("not usual"));
        }

        @Test
        void pours_whose_young_nights_are_usually_frosty_are_marked() {
            pour.poured = LocalDate.of(2027, 1, 1);
            pour.high = "4 8 12 20 20 20 20 20 20 10 6 4 degC";
            pour.low = "-6 0.5 2 10 10 10 10 10 10 5 1 -4 degC";
            List<Amount> marks = pour.work().tables().get(1).rows().stream()
                    .map(row -> row.get(3))
                    .toList();
            assertThat(marks.getFirst()).isEqualTo(Amount.word("usual: only if kept warm"));
            assertThat(marks.get(6)).isEqualTo(Amount.word("not usual"));
            assertThat(marks.getLast()).isEqualTo(Amount.word("usual: only if kept warm"));
        }

        @Test
        void waits_on_other_dates_keep_the_least_days() {
            pour.leastDays = 9;
            assertThat(pour.work().tables().get(1).rows())
                    .allSatisfy(row -> assertThat(row.get(1)).isEqualTo(Amount.count(9, "days")));
        }

        @Test
        void what_is_never_ready_is_said_in_words() {
            pour.high = "-5 degC";
            pour.low = "-5 degC";
            pour.ageing = Ageing.NURSE_SAUL_ZERO;
            Worksheet sheet = pour.work();
            Amount never = Amount.word("not in ten years");
            assertThat(sheet.tables().get(1).rows().getFirst())
                    .containsExactly(
                            Amount.on(LocalDate.of(2027, 5, 1)), never, never, Amount.word("usual: only if kept warm"));
            assertThat(sheet.tables().get(2).rows())
                    .extracting(row -> row.get(2))
                    .containsExactly(
                            never,
                            never,
                            never,
                            Amount.count(29, "days"),
                            never,
                            never,
                            never,
                            Amount.count(42, "days"));
        }

        @Test
        void every_published_method_has_its_days() {
            List<List<Amount>> rows = pour.work().tables().get(2).rows();
            assertThat(rows)
                    .extracting(row -> number(row.get(2)))
                    .containsExactly(5.0, 6.0, 5.0, 5.0, 7.0, 9.0, 7.0, 7.0);
            assertThat(rows.get(5).subList(0, 2))
                    .containsExactly(Amount.word("ACI 209R"), Amount.word("equivalent age, 5000 K and 23 °C"));
            pour.cement = Cement.SLOW;
            assertThat(pour.work().tables().get(2).rows()).hasSize(4);
        }

        @Test
        void a_curve_from_the_pour_to_28_days() {
            Curve curve = pour.work().curves().getFirst();
            assertThat(curve.points()).hasSize(29);
            assertThat(curve.points().getFirst()).isEqualTo(new Curve.Point(0, 0));
            assertThat(curve.points().getLast().x()).isEqualTo(28);
            assertThat(curve.points().getLast().y()).isCloseTo(99.98, within(0.01));
            assertThat(curve.points().get(5).y()).isCloseTo(71.0232, within(0.0001));
            assertThat(curve.across()).isEqualTo("days after 2027-05-01");
        }

        @Test
        void marks_stand_at_the_awaited_share_and_at_28_days() {
            pour.leastDays = 8;
            List<Curve.Mark> marks = pour.work().curves().getFirst().marks();
            assertThat(marks).extracting(Curve.Mark::label).containsExactly("awaited share", "28 days");
            assertThat(marks).extracting(Curve.Mark::x).containsExactly(5.0, 28.0);
            assertThat(marks.getFirst().y()).isCloseTo(71.0232, within(0.0001));
        }

        @ParameterizedTest(name = "{0} d: {1} points")
        @CsvSource(textBlock = """
                120, 121
                121,  62
                365,  93
                """)
        void a_long_wait_has_fewer_points_and_still_its_end(int days, int points) {
            pour.leastDays = days;
            Curve curve = pour.work().curves().getFirst();
            assertThat(curve.points()).hasSize(points);
            assertThat(curve.points().getLast().x()).isEqualTo(days);
        }
    }

    @Nested
    class Refusals {
        @Test
        void lows_over_the_highs() {
            pour.high = "20 20 20 20 20 20 20 20 20 20 20 19 degC";
            assertRefused("meanLow [20 degC] is in some month over the highs. Enter lows under the highs.");
            pour.low = "20 20 20 20 20 20 20 20 20 20 20 19 degC";
            assertThat(number(pour.work(), "wait-days")).isEqualTo(5);
        }

        @Test
        void slow_cement_by_aci() {
            pour.cement = Cement.SLOW;
            pour.curve = StrengthMethod.ACI_209;
            assertRefused(
                    "curve [ACI 209R] has no values for slow cement. Choose EN 1992-1-1, or normal or rapid cement.");
        }

        @Test
        void a_milestone_of_ones_own_without_a_share() {
            pour.percent = null;
            assertRefused(
                    "sharePercent [nothing] is needed for a milestone of your own. Enter a percentage from 5 to 100,"
                            + " or choose another milestone.");
        }

        @ParameterizedTest
        @ValueSource(strings = {"1989-12-31", "2200-01-01"})
        void dates_far_away(LocalDate date) {
            pour.poured = date;
            assertRefused("poured [" + date + "] is too far away. Enter a date from 1990 to 2199.");
        }

        @ParameterizedTest
        @ValueSource(strings = {"1990-01-01", "2199-12-31"})
        void but_not_the_first_and_last_one(LocalDate date) {
            pour.poured = date;
            assertThat(number(pour.work(), "wait-days")).isEqualTo(5);
        }

        @ParameterizedTest
        @ValueSource(strings = {"4.9", "100.1"})
        void shares_beyond_the_limits(String percent) {
            pour.percent = percent;
            assertThatThrownBy(pour::work).isInstanceOf(Refusal.class).hasMessageContaining("Enter from 5 to 100");
        }

        private void assertRefused(String message) {
            assertThatThrownBy(pour::work).isInstanceOf(Refusal.class).hasMessage(message);
        }
    }
}
