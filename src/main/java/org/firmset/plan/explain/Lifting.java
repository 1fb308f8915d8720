package org.firmset.plan.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.firmset.plan.Layout;
import org.firmset.plan.LeastWait;
import org.firmset.plan.Material;
import org.firmset.plan.PlanningProblem;
import org.firmset.plan.Stage;
import org.firmset.plan.Trip;
import org.firmset.plan.Wait;
import org.firmset.trade.haul.Bay;
import org.firmset.trade.haul.Rig;

/** Takes rules out of a problem. A problem with fewer rules has every plan that the whole one has, and maybe more. */
public final class Lifting {
    private static final long PLENTY = 1L << 40;
    private static final LeastWait NO_WAIT = new LeastWait.Days(0);

    private final PlanningProblem problem;
    private final Map<Kind, List<String>> lifted = new HashMap<>();

    private Lifting(PlanningProblem problem, Collection<Restriction> restrictions) {
        this.problem = problem;
        restrictions.forEach(
                r -> lifted.computeIfAbsent(r.kind(), k -> new ArrayList<>()).add(r.id()));
    }

    /** The problem without some rules. {@link Kind#OTHER_FINISH} is no rule of a problem and is passed over. */
    public static PlanningProblem without(PlanningProblem problem, Collection<Restriction> restrictions) {
        return restrictions.isEmpty() ? problem : new Lifting(problem, restrictions).lift();
    }

    /** All rules of a problem that can be lifted and that say anything, by kind. */
    public static List<Restriction> all(PlanningProblem problem) {
        List<Restriction> result = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            ids(problem, kind).forEach(id -> result.add(new Restriction(kind, id)));
        }
        return result;
    }

    private static Stream<String> ids(PlanningProblem problem, Kind kind) {
        Stream<Stage> open = problem.stages().stream().filter(s -> !s.finished());
        return switch (kind) {
            case LEAD_TIME -> materials(problem, m -> m.availableFrom().isAfter(problem.statusDate()));
            case SHELF_LIFE -> materials(problem, m -> m.shelfLifeDays() != Material.NEVER_GOES_OFF);
            case SPENDING ->
                problem.spending() != null && problem.spending().hard() ? Stream.of(Restriction.WHOLE) : Stream.empty();
            case TOOL -> problem.tools().stream().map(t -> t.id());
            case POWER -> open.anyMatch(s -> s.wattHoursPerHour() > 0) ? Stream.of(Restriction.WHOLE) : Stream.empty();
            case SEASON -> open.filter(s -> !s.shut().isEmpty()).map(Stage::id);
            case CREW -> open.filter(s -> s.crew() > 0).map(Stage::id);
            case PIN -> problem.pins().stream().map(p -> p.stage()).distinct();
            case VEHICLES -> problem.materials().isEmpty() ? Stream.empty() : Stream.of(Restriction.WHOLE);
            case DRY_ROOM ->
                problem.materials().stream().anyMatch(Material::dry) ? Stream.of(Restriction.WHOLE) : Stream.empty();
            case LONGEST_WAIT -> problem.waits().stream().filter(Wait::hasMost).map(Wait::id);
            case LEAST_WAIT ->
                problem.waits().stream().filter(w -> !w.least().equals(NO_WAIT)).map(Wait::id);
            case IN_ONE_GO -> open.filter(Lifting::isBound).map(Stage::id);
            case HOURS -> Stream.of(Restriction.WHOLE);
            case OTHER_FINISH -> Stream.empty();
        };
    }

    private static Stream<String> materials(PlanningProblem problem, Predicate<Material> which) {
        return problem.materials().stream().filter(which).map(Material::id);
    }

    private static boolean isBound(Stage stage) {
        return stage.layout() != Layout.SPLITTABLE
                || stage.effectiveLeastBlock() > 1
                || stage.mostBlockQuarters() < stage.labourQuarters();
    }

    private boolean lifts(Kind kind, String id) {
        List<String> ids = lifted.getOrDefault(kind, List.of());
        return ids.contains(Restriction.WHOLE) || ids.contains(id);
    }

    private PlanningProblem lift() {
        PlanningProblem result = problem.withStages(each(problem.stages(), this::stage))
                .withWaits(each(problem.waits(), this::wait))
                .withMaterials(each(problem.materials(), this::material))
                .withTrips(each(problem.trips(), this::trip))
                .withPins(problem.pins().stream()
                        .filter(p -> !lifts(Kind.PIN, p.stage()))
                        .toList());
        return lifts(Kind.SPENDING, Restriction.WHOLE) ? result.withSpending(null) : result;
    }

    private static <T> List<T> each(List<T> parts, UnaryOperator<T> change) {
        return parts.stream().map(change).toList();
    }

    private Stage stage(Stage stage) {
        if (stage.finished()) {
            return stage;
        }
        Stage result = stage;
        result = when(Kind.CREW, stage.id(), result, s -> s.withCrew(0));
        result = when(Kind.SEASON, stage.id(), result, s -> s.withShut(List.of()));
        result = when(Kind.POWER, Restriction.WHOLE, result, s -> s.withWattHoursPerHour(0));
        result = when(Kind.IN_ONE_GO, stage.id(), result, Lifting::free);
        return result.withTools(
                result.tools().stream().filter(u -> !lifts(Kind.TOOL, u.tool())).toList());
    }

    private <T> T when(Kind kind, String id, T part, UnaryOperator<T> change) {
        return lifts(kind, id) ? change.apply(part) : part;
    }

    private static Stage free(Stage stage) {
        return stage.withBlocks(Layout.SPLITTABLE, 0, Stage.NO_LIMIT);
    }

    private Wait wait(Wait wait) {
        LeastWait least = lifts(Kind.LEAST_WAIT, wait.id()) ? NO_WAIT : wait.least();
        int most = lifts(Kind.LONGEST_WAIT, wait.id()) ? Wait.NO_LIMIT : wait.mostDays();
        return new Wait(wait.id(), wait.name(), wait.kind(), wait.from(), wait.to(), least, most);
    }

    private Material material(Material material) {
        return new Material(
                material.id(),
                material.name(),
                material.grams(),
                material.millilitres(),
                material.longestMillimetres(),
                material.dry() && !lifts(Kind.DRY_ROOM, Restriction.WHOLE),
                lifts(Kind.SHELF_LIFE, material.id()) ? Material.NEVER_GOES_OFF : material.shelfLifeDays(),
                lifts(Kind.LEAD_TIME, material.id()) ? problem.statusDate() : material.availableFrom(),
                material.cents());
    }

    private Trip trip(Trip trip) {
        boolean hours = lifts(Kind.HOURS, trip.id());
        boolean vehicles = lifts(Kind.VEHICLES, Restriction.WHOLE);
        if (!hours && !vehicles) {
            return trip;
        }
        long labour = problem.stages().stream().mapToLong(Stage::labourQuarters).sum();
        int most = (int) Math.min(Integer.MAX_VALUE / 4, labour);
        Trip longer = !hours
                ? trip
                : trip.withDays(each(
                        trip.days(),
                        d -> d.withLabour(Math.max(most, d.labourQuarters()), Math.max(most, d.lightQuarters()))));
        return vehicles ? longer.withRig(great(trip.rig())) : longer;
    }

    private static Rig great(Rig rig) {
        return new Rig(rig.id(), rig.name(), List.of(new Bay("great", rig.name(), PLENTY, PLENTY)), List.of());
    }
}
