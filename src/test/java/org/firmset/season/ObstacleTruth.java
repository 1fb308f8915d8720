package org.firmset.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firmset.plan.DeliveryOffer;
import org.firmset.plan.Layout;
import org.firmset.plan.Material;
import org.firmset.plan.Need;
import org.firmset.plan.Obstacle;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.SiteDay;
import org.firmset.plan.Stage;
import org.firmset.plan.StockLot;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.trade.haul.Rig;

/** Works out anew whether what an obstacle says is so, and that its figures show it. */
final class ObstacleTruth {
    private static final Pattern TWO_AMOUNTS =
            Pattern.compile("takes? ([\\d,.]+) (?:h|hours|Wh)\\b.* than (?:only )?([\\d,.]+)");

    private final PlanningProblem problem;
    private final List<SiteDay> days;
    private final Alone alone;

    ObstacleTruth(PlanningProblem problem) {
        this.problem = problem;
        days = problem.trips().stream().flatMap(t -> t.days().stream()).toList();
        alone = new Alone(problem);
    }

    void check(Obstacle obstacle) {
        assertThat(obstacle.stages()).as("stages of: %s", obstacle.message()).isNotEmpty();
        Stage stage = alone.stage(obstacle.stages().getFirst());
        boolean so = switch (obstacle.rule()) {
            case CREW -> days.stream().allMatch(d -> d.people() < stage.crew());
            case SHUT -> days.stream().filter(d -> d.people() >= stage.crew()).allMatch(d -> stage.isShutOn(d.date()));
            case PINNED -> days.stream().noneMatch(d -> alone.mayWork(stage, d));
            case HOURS -> hoursAreShort(stage);
            case POWER -> powerIsShort(stage);
            case WAITS -> circle(obstacle) || neverInTime(obstacle);
            case RUNS -> obstacle.stages().stream().anyMatch(this::needsWhatCannotCome);
            case LABOUR -> cannotBeSplit(stage);
            case TOOLS, MONEY, SUPPLIES -> fail("no such proof is known: " + obstacle.message());
        };
        assertThat(so).as("it is so that: %s", obstacle.message()).isTrue();
        figuresClash(obstacle);
    }

    private static void figuresClash(Obstacle obstacle) {
        Matcher amounts = TWO_AMOUNTS.matcher(obstacle.message());
        if (amounts.find()) {
            assertThat(number(amounts.group(1)))
                    .as("what is needed is more than what is there: %s", obstacle.message())
                    .isGreaterThan(number(amounts.group(2)));
        }
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(",", "").replaceAll("\\.$", ""));
    }

    private boolean hoursAreShort(Stage stage) {
        int needed = problem.stages().stream().mapToInt(Stage::labourQuarters).sum();
        int there = days.stream().mapToInt(SiteDay::labourQuarters).sum();
        return needed > there
                || alone.earliestFinish(stage, problem.statusDate()).isEmpty();
    }

    private boolean powerIsShort(Stage stage) {
        int least = stage.layout() == Layout.IN_ONE_GO ? stage.labourQuarters() : stage.effectiveLeastBlock();
        boolean noDay = days.stream()
                .filter(d -> alone.mayWork(stage, d) && d.quartersFor(stage) >= least)
                .noneMatch(d -> alone.powered(stage, d, least));
        return noDay || alone.earliestFinish(stage, problem.statusDate()).isEmpty();
    }

    private boolean circle(Obstacle obstacle) {
        List<String> stages = obstacle.stages();
        for (int i = 1; i < stages.size(); i++) {
            String from = stages.get(i - 1);
            String to = stages.get(i);
            if (problem.waits().stream().noneMatch(w -> w.from().equals(from) && w.to().equals(to))) {
                return false;
            }
        }
        return stages.size() > 2 && stages.getFirst().equals(stages.getLast());
    }

    /** Either the work comes too late for the last open date, or its longest wait is over before it can start. */
    private boolean neverInTime(Obstacle obstacle) {
        Stage stage = alone.stage(obstacle.stages().getFirst());
        return alone.earliestStart(stage)
                        .flatMap(d -> alone.earliestFinish(stage, d))
                        .isEmpty()
                || problem.waits().stream()
                        .filter(w -> w.to().equals(stage.id()) && stage.startedOn() == null)
                        .anyMatch(w -> isOver(w, stage));
    }

    private boolean isOver(Wait wait, Stage stage) {
        LocalDate earliest = alone.earliestStart(stage).orElse(LocalDate.MAX);
        return wait.hasMost()
                && alone.possibleFinishes(alone.stage(wait.from())).noneMatch(finish -> {
                    LocalDate ready = finish.plusDays(wait.least().daysAfter(finish));
                    return alone.firstDay(stage, ready.isAfter(earliest) ? ready : earliest)
                            .filter(d -> !d.isAfter(finish.plusDays(wait.mostDays())))
                            .isPresent();
                });
    }

    private static boolean cannotBeSplit(Stage stage) {
        int most = Math.min(stage.mostBlockQuarters(), stage.labourQuarters());
        for (int blocks = 1; blocks <= stage.labourQuarters(); blocks++) {
            if ((long) blocks * stage.effectiveLeastBlock() <= stage.labourQuarters()
                    && stage.labourQuarters() <= (long) blocks * most) {
                return false;
            }
        }
        return true;
    }

    private boolean needsWhatCannotCome(String stage) {
        return alone.stage(stage).needs().stream()
                .map(Need::material)
                .anyMatch(m -> packsNeeded(m) > packsOnSite(m) && cannotCome(material(m)));
    }

    private Material material(String id) {
        return problem.materials().stream()
                .filter(m -> m.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private int packsNeeded(String material) {
        return problem.stages().stream()
                .flatMap(s -> s.needs().stream())
                .filter(n -> n.material().equals(material))
                .mapToInt(Need::packs)
                .sum();
    }

    private int packsOnSite(String material) {
        return problem.site().stock().stream()
                .filter(l -> l.material().equals(material))
                .mapToInt(StockLot::packs)
                .sum();
    }

    private boolean cannotCome(Material material) {
        return problem.trips().stream().noneMatch(t -> rides(material, t))
                && problem.offers().stream().noneMatch(o -> isBrought(material, o));
    }

    private boolean rides(Material material, Trip trip) {
        Rig rig = trip.rig();
        return !trip.firstDate().isBefore(material.availableFrom())
                && rig.bays().stream()
                        .anyMatch(b -> b.longestMillimetres() >= material.longestMillimetres()
                                && b.millilitres() >= material.millilitres()
                                && rig.limits().stream()
                                        .allMatch(l -> material.grams() * l.shareOf(b.id()) <= l.grams() * 1000));
    }

    private boolean isBrought(Material material, DeliveryOffer offer) {
        return offer.materials().contains(material.id())
                && offer.grams() >= material.grams()
                && problem.trips().stream().anyMatch(t -> isBroughtFor(t, material, offer));
    }

    private boolean isBroughtFor(Trip trip, Material material, DeliveryOffer offer) {
        LocalDate from =
                offer.earliest().isAfter(material.availableFrom()) ? offer.earliest() : material.availableFrom();
        boolean met = trip.days().stream().map(SiteDay::date).anyMatch(d -> !d.isBefore(from) && comesOn(d, offer));
        if (met || offer.attended() || material.dry()) {
            return met;
        }
        LocalDate leftAlone = days.stream()
                .map(SiteDay::date)
                .filter(d -> d.isBefore(trip.firstDate()))
                .reduce(problem.statusDate().minusDays(1), (a, b) -> b);
        return leftAlone.plusDays(1).datesUntil(trip.firstDate()).anyMatch(d -> !d.isBefore(from) && comesOn(d, offer));
    }

    private static boolean comesOn(LocalDate date, DeliveryOffer offer) {
        return offer.weekdays().contains(date.getDayOfWeek())
                && !offer.shutMonths().contains(date.getMonth());
    }
}
