package org.firmset.season.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.file.HomesteadFile;
import org.firmset.homestead.file.Reading;
import org.firmset.measure.Hours;
import org.firmset.plan.Effort;
import org.firmset.plan.Former;
import org.firmset.plan.Stop;
import org.firmset.plan.Style;
import org.firmset.season.Reports;
import org.firmset.season.StageCopies;
import org.firmset.season.report.SeasonPlanner;
import org.firmset.season.result.PlannedSeason;
import org.firmset.season.result.SeasonReport;
import org.junit.jupiter.api.Test;

/** On the homestead of two weekends, of which the gutter takes so much longer that a third is needed. */
class SideBySideTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final Homestead SMALL = small();

    private static Homestead small() {
        try {
            byte[] file = Files.readAllBytes(Path.of("seed-data/two-weekends.json"));
            return ((Reading.Accepted) HomesteadFile.read(file)).homestead();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PlannedSeason season(Homestead homestead) {
        SeasonPlanner.Result result = new SeasonPlanner().plan(homestead, TODAY, Style.SOONEST, new Effort(100, 1));
        return ((SeasonPlanner.Result.Planned) result).season();
    }

    private static PlannedSeason longerGutter() {
        return season(StageCopies.withStage(SMALL, "gutter", s -> StageCopies.withLabour(s, new Hours(16))));
    }

    private static SideBySide longerGutterBesideSmall() {
        return Comparing.beforeAndNow(season(SMALL).report(), longerGutter().report());
    }

    private static SeasonReport with(SeasonReport r, Predicate<SeasonReport.StagePart> which) {
        return Reports.withStages(r, r.stages().stream().filter(which).toList());
    }

    @Test
    void a_longer_stage_moves_its_finish_and_needs_a_trip_that_is_paid_for() {
        SideBySide plans = longerGutterBesideSmall();

        assertThat(plans.finishes())
                .containsExactly(new SideBySide.Finish(
                        "wood-store", "Wood store", LocalDate.of(2027, 5, 23), LocalDate.of(2027, 6, 5), 2, 3));
        assertThat(plans.moved()).extracting(SideBySide.Moved::key).containsExactly("gutter");
        assertThat(plans.moved().getFirst().finishDays()).hasValue(13);
        assertThat(plans.kept()).containsExactly("dig", "gravel", "posts", "beams", "oil", "roof");
        assertThat(plans.tripsOfFirstOnly()).isEmpty();
        assertThat(plans.tripsOfSecondOnly())
                .extracting(SeasonReport.TripPart::firstDate)
                .containsExactly(LocalDate.of(2027, 6, 5));
    }

    @Test
    void the_words_give_the_price_and_the_same_figures() {
        SideBySideWords words = new SideBySideWords(longerGutterBesideSmall());

        assertThat(words.price())
                .isEqualTo("Now keeps 6 of 7 stages where they were; Wood store finishes 13 days later; 1 trip more;"
                        + " €60.00 more.");
        assertThat(words.tables().get(0).rows())
                .containsExactly(
                        List.of("Wood store", "Sun 23 May 2027", "Sat 5 Jun 2027", "13 days later", "2, then 3"));
        assertThat(words.tables().get(1).rows())
                .containsExactly(
                        List.of("Trips", "2", "3", "1 trip more"),
                        List.of("Runs with materials", "2", "2", "as many"),
                        List.of("Still to spend", "€711.80", "€771.80", "€60.00 more"));
        assertThat(words.tables().get(2).rows())
                .containsExactly(List.of(
                        "1 Gutter and rain barrel", "Sun 23 May", "Sun 23 May to Sat 5 Jun", "done 13 days later"));
        assertThat(words.trips()).containsExactly("Trips made only in 'Now': 5–6 Jun.");
        assertThat(words.kept()).hasSize(6).contains("Beams and rafters");
    }

    @Test
    void the_other_way_round_it_is_earlier_fewer_and_less() {
        SideBySide plans =
                Comparing.beforeAndNow(longerGutter().report(), season(SMALL).report());

        assertThat(new SideBySideWords(plans).price())
                .isEqualTo("Now keeps 6 of 7 stages where they were; Wood store finishes 13 days earlier; 1 trip fewer;"
                        + " €60.00 less.");
    }

    @Test
    void stages_that_only_one_plan_has_are_new_and_gone() {
        SeasonReport whole = season(SMALL).report();
        SideBySide plans = Comparing.beforeAndNow(
                with(whole, s -> !s.key().equals("dig")),
                with(whole, s -> !s.key().equals("oil")));

        assertThat(plans.moved()).extracting(SideBySide.Moved::key).containsExactly("dig", "oil");
        assertThat(plans.moved()).extracting(SideBySideWords::difference).containsExactly("new", "gone");
        assertThat(plans.kept()).hasSize(5);
    }

    @Test
    void a_plan_beside_itself_moves_nothing() {
        SeasonReport report = season(SMALL).report();
        SideBySideWords words = new SideBySideWords(Comparing.beforeAndNow(report, report));

        assertThat(words.price()).isEqualTo("Now keeps 7 of 7 stages where they were.");
        SideBySide limited = SideBySide.of(
                new SideBySide.Named("Now", report), new SideBySide.Named("At most €9.00, whatever it takes", report));
        assertThat(new SideBySideWords(limited).price())
                .isEqualTo("At most €9.00, whatever it takes, keeps 7 of 7 stages where they were.");
        assertThat(words.tables().get(2).rows()).isEmpty();
        assertThat(words.trips()).containsExactly("Both make the same trips.");
        assertThat(Moves.between(report, report)).isEmpty();
    }

    @Test
    void what_moved_is_told_in_sentences_the_weightiest_first() {
        assertThat(Moves.between(season(SMALL).report(), longerGutter().report()))
                .containsExactly(
                        "Wood store is finished 13 days later, on Sat 5 Jun.",
                        "It takes 1 trip more: 3 in all.",
                        "It costs €60.00 more.",
                        "Gutter and rain barrel is done 13 days later, on Sat 5 Jun.");
    }

    @Test
    void beside_the_plan_before_the_change_that_moved_it_is_named() {
        Compared compared = Comparing.withBefore(longerGutter(), season(SMALL), new Stop());

        assertThat(compared)
                .isInstanceOfSatisfying(
                        Compared.Plans.class,
                        plans -> assertThat(plans.notes())
                                .contains("Gutter and rain barrel changed: Wood store 13 days later, 1 trip more."));
    }

    @Test
    void beside_another_style_the_homestead_is_planned_in_it() {
        Compared compared = Comparing.withStyle(SMALL, season(SMALL), Style.FEWEST_TRIPS, List.of(), new Stop());

        assertThat(compared).isInstanceOfSatisfying(Compared.Plans.class, plans -> {
            assertThat(plans.plans().second().name()).isEqualTo("Fewest trips");
            assertThat(plans.plans().second().report().style()).isEqualTo(Style.FEWEST_TRIPS);
        });
    }

    @Test
    void the_least_change_is_counted_from_the_plan_before() {
        PlannedSeason now = longerGutter();
        List<Former> former = List.of(new Former("dig", LocalDate.of(2027, 5, 22), LocalDate.of(2027, 5, 22)));

        assertThat(Comparing.withStyle(SMALL, now, Style.LEAST_CHANGE, List.of(), new Stop()))
                .isInstanceOf(Compared.Nothing.class);
        assertThat(Comparing.withStyle(SMALL, now, Style.LEAST_CHANGE, former, new Stop()))
                .isInstanceOfSatisfying(
                        Compared.Plans.class,
                        plans -> assertThat(plans.plans().second().report().stage("dig"))
                                .hasValueSatisfying(s -> assertThat(s.start()).isEqualTo(LocalDate.of(2027, 5, 22))));
    }
}
