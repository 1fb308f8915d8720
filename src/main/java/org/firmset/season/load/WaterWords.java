package org.firmset.season.load;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.firmset.homestead.Homestead;
import org.firmset.homestead.Stage;
import org.firmset.homestead.WaterStore;
import org.firmset.measure.Mass;
import org.firmset.measure.Units;
import org.firmset.measure.Volume;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Schedule;
import org.firmset.plan.Trip;
import org.firmset.plan.WorkBlock;
import org.firmset.season.problem.ProblemWriter;
import org.firmset.season.problem.WaterWriter;
import org.firmset.season.words.Dates;
import org.firmset.season.words.WaterMeasure;
import org.jspecify.annotations.Nullable;

/** Says in plain words what water a trip takes, and where it comes from. */
public final class WaterWords {
    private final Homestead homestead;
    private final Schedule schedule;
    private final Map<String, Stage> stages;
    private final Map<String, TripWater> trips;

    public WaterWords(Homestead homestead, PlanningProblem problem, Schedule schedule) {
        this.homestead = homestead;
        this.schedule = schedule;
        stages = homestead.stages().stream().collect(Collectors.toMap(Stage::key, Function.identity()));
        trips = TripWaterWriter.of(problem, schedule);
    }

    /** Empty for a trip without water. */
    public List<String> of(Trip trip) {
        @Nullable WaterStore store = homestead.water();
        if (store == null) {
            return notCounted(trip);
        }
        TripWater water = trips.get(trip.id());
        return water == null ? List.of() : new Telling(store, water).words();
    }

    private List<String> notCounted(Trip trip) {
        BigDecimal taken = schedule.blocks().stream()
                .filter(b -> TripWork.isIn(trip, b.date()))
                .map(this::cubicMetres)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return taken.signum() == 0
                ? List.of()
                : List.of("Its work takes about %s. Water is not counted: Place and kit names no tank to take it from."
                        .formatted(WaterMeasure.show(new Volume(taken), homestead.units())));
    }

    private BigDecimal cubicMetres(WorkBlock block) {
        Stage stage = Objects.requireNonNull(stages.get(block.stage()));
        return stage.water() == null
                ? BigDecimal.ZERO
                : stage.water()
                        .value()
                        .multiply(BigDecimal.valueOf(block.quarters()))
                        .divide(BigDecimal.valueOf(stage.labour().quarters()), 6, RoundingMode.HALF_EVEN);
    }

    private final class Telling {
        private final WaterStore store;
        private final TripWater water;

        Telling(WaterStore store, TripWater water) {
            this.store = store;
            this.water = water;
        }

        List<String> words() {
            List<String> words = new ArrayList<>();
            words.add(used());
            words.add(tank());
            bring(words);
            left(words);
            return words;
        }

        private String used() {
            if (water.used() == 0) {
                return "Its work takes no water.";
            }
            int fromCans = water.used() - water.usedFromTank();
            String from = fromCans == 0
                    ? "all from the tank"
                    : water.usedFromTank() == 0
                            ? "all from cans"
                            : "%s from the tank, %s from cans"
                                    .formatted(litres(water.usedFromTank()), litres(fromCans));
            return "Its work takes %s, counted in whole cans: %s.".formatted(litres(water.used()), from);
        }

        private String tank() {
            String rain = water.rain() == 0
                    ? "no rain is counted on"
                    : "%s of that is rain still to come, as usual for the time of year".formatted(litres(water.rain()));
            return "In the tank: %s before it (%s), %s after it."
                    .formatted(litresOrNone(water.tankBefore()), rain, litresOrNone(water.tankAfter()));
        }

        private void bring(List<String> words) {
            TripWater.@Nullable Emptied emptied = water.emptied();
            boolean brings = water.brought() > 0;
            String bring = "bring %s of water, %s"
                    .formatted(
                            water.brought() == 1 ? "1 can" : water.brought() + " cans",
                            Units.show(mass(), homestead.units()));
            if (emptied != null) {
                String empty = "The tank is empty after %s on %s"
                        .formatted(stageName(emptied.stage()), Dates.day(emptied.date()));
                words.add(empty + (brings ? ": " + bring : "; no can need be brought") + ".");
            } else if (brings) {
                words.add(
                        water.tankBefore() == 0
                                ? "The tank is empty before it: " + bring + "."
                                : SupplyWords.capital(bring)
                                        + ", for work to come: the tank does not last for all of it.");
            }
        }

        private void left(List<String> words) {
            if (water.cansBefore() > 0) {
                words.add("Full cans on site before it: %d.".formatted(water.cansBefore()));
            }
            if (water.cansAfter() > 0) {
                words.add("Full cans left on site after it: %d.".formatted(water.cansAfter()));
            }
        }

        private Mass mass() {
            long each = WaterWriter.materials(homestead).stream()
                    .filter(m -> m.key().equals(WaterWriter.ID))
                    .mapToLong(m -> ProblemWriter.thousandths(m.mass()))
                    .findFirst()
                    .orElseThrow();
            return Mass.ofGrams(each * water.brought());
        }

        private String litres(int cans) {
            return WaterMeasure.show(WaterWriter.litres(store, cans), homestead.units());
        }

        private String litresOrNone(int cans) {
            return cans == 0 ? "nothing" : litres(cans);
        }
    }

    private String stageName(String key) {
        return Objects.requireNonNull(stages.get(key)).name();
    }
}
